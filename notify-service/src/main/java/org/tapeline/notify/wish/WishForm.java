package org.tapeline.notify.wish;

import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Wishes as they were typed, so that what is wrong can be shown again.
 *
 * @param first {@code mail}, {@code text} or empty
 * @param from and {@code to}: such as {@code 21:00}, or both empty
 * @param zone such as {@code America/Denver}, or empty
 */
public record WishForm(String first, String from, String to, String zone) {
  private static final List<String> CHANNELS = List.of("mail", "text");

  public WishForm {
    first = first == null ? "" : first.strip();
    from = from == null ? "" : from.strip();
    to = to == null ? "" : to.strip();
    zone = zone == null ? "" : zone.strip();
  }

  static WishForm of(Wish wish) {
    return new WishForm(
        wish.channels().isEmpty() ? "" : wish.channels().getFirst(),
        wish.quiet().map(q -> q.from().toString()).orElse(""),
        wish.quiet().map(q -> q.to().toString()).orElse(""),
        wish.zone().map(ZoneId::getId).orElse(""));
  }

  /** Codes of what is wrong, by field; empty when nothing is. */
  public Map<String, String> wrong() {
    Map<String, String> wrong = new HashMap<>();
    if (!first.isEmpty() && !CHANNELS.contains(first)) {
      wrong.put("first", "contact.wrong.choice");
    }
    boolean quiet = !from.isEmpty() || !to.isEmpty();
    if (quiet && (time(from).isEmpty() || time(to).isEmpty() || time(from).equals(time(to)))) {
      wrong.put("quiet", "contact.wrong.hours");
    }
    if (!zone.isEmpty() && region(zone).isEmpty()) {
      wrong.put("zone", "contact.wrong.choice");
    }
    return wrong;
  }

  /** Only when nothing is {@link #wrong}. */
  Wish wish() {
    List<String> order = new ArrayList<>();
    if (!first.isEmpty()) {
      order.add(first);
      CHANNELS.stream().filter(c -> !c.equals(first)).forEach(order::add);
    }
    return new Wish(
        order, time(from).map(f -> new Wish.Quiet(f, time(to).orElseThrow())), region(zone));
  }

  private static Optional<LocalTime> time(String text) {
    try {
      return Optional.of(LocalTime.parse(text).withSecond(0).withNano(0));
    } catch (DateTimeParseException e) {
      return Optional.empty();
    }
  }

  private static Optional<ZoneId> region(String id) {
    try {
      return id.contains("/") ? Optional.of(ZoneId.of(id)) : Optional.empty();
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }
}
