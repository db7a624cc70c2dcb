package org.tapeline.notify.trace;

import jakarta.ws.rs.core.MultivaluedMap;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tapeline.journal.quarkus.http.MeantDay;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.notify.channel.ChannelPolicy;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.NoticeStates;
import org.tapeline.notify.notice.Urgency;

/**
 * What somebody typed to find notices, kept as it was typed.
 *
 * @param typed by field; what is empty asks for all
 * @param errors by field, in a sentence
 */
public record FilterForm(Map<String, String> typed, Map<String, String> errors) {
  /** A notice that no channel reaches. */
  static final String NO_CHANNEL = "none";

  private static final List<String> KINDS =
      Arrays.stream(NoticeKind.values()).map(NoticeKind::code).toList();
  private static final List<String> URGENCIES =
      Arrays.stream(Urgency.values()).map(Urgency::code).toList();
  private static final List<String> STATES = NoticeStates.ALL;
  private static final List<String> CHANNELS = allChannels();

  private static List<String> allChannels() {
    TreeSet<String> all = new TreeSet<>(ChannelPolicy.CHANNELS);
    return Stream.concat(all.stream(), Stream.of(NO_CHANNEL)).toList();
  }

  static FilterForm of(MultivaluedMap<String, String> query) {
    Map<String, String> typed = new LinkedHashMap<>();
    Map<String, String> errors = new LinkedHashMap<>();
    for (String field : List.of("kind", "urgency", "state", "channel", "from", "to")) {
      String value = Optional.ofNullable(query.getFirst(field)).map(String::strip).orElse("");
      typed.put(field, value);
      if (!value.isEmpty()) {
        wrong(field, value).ifPresent(sentence -> errors.put(field, sentence));
      }
    }
    return new FilterForm(typed, errors);
  }

  private static Optional<String> wrong(String field, String value) {
    return switch (field) {
      case "kind" -> oneOf(KINDS, value);
      case "urgency" -> oneOf(URGENCIES, value);
      case "state" -> oneOf(STATES, value);
      case "channel" -> oneOf(CHANNELS, value);
      default ->
          day(value).isPresent() ? Optional.empty() : Optional.of("Type a day such as 2025-09-13.");
    };
  }

  private static Optional<String> oneOf(List<String> all, String value) {
    return all.contains(value)
        ? Optional.empty()
        : Optional.of("Choose one of " + String.join(", ", all) + ".");
  }

  private static Optional<LocalDate> day(String typed) {
    try {
      return typed.isEmpty() ? Optional.empty() : Optional.of(MeantDay.parse(typed));
    } catch (DateTimeException e) {
      return Optional.empty();
    }
  }

  /** What is right of it, as a filter; the last day is whole. */
  NoticeFilter filter(ZoneId zone) {
    return new NoticeFilter(
        right("kind"),
        right("urgency"),
        right("state"),
        right("channel"),
        day(typed.get("from")).map(day -> day.atStartOfDay(zone).toInstant()),
        day(typed.get("to")).map(day -> day.plusDays(1).atStartOfDay(zone).toInstant()));
  }

  private Optional<String> right(String field) {
    return Optional.of(typed.get(field)).filter(v -> !v.isEmpty() && !errors.containsKey(field));
  }

  /**
   * The same, for other programs.
   *
   * @throws Problem when something of it is wrong
   */
  NoticeFilter filterOrRefuse(ZoneId zone) {
    if (!errors.isEmpty()) {
      throw Problem.badRequest(
          "not-a-filter",
          String.join(" ", errors.values()),
          errors.entrySet().stream()
              .map(error -> new Problem.FieldError(error.getKey(), error.getValue()))
              .toArray(Problem.FieldError[]::new));
    }
    return filter(zone);
  }

  /** The same filter in an address: empty, or with its question mark. */
  public String query() {
    String all =
        typed.entrySet().stream()
            .filter(field -> !field.getValue().isEmpty())
            .map(
                field ->
                    field.getKey()
                        + "="
                        + URLEncoder.encode(field.getValue(), StandardCharsets.UTF_8))
            .collect(Collectors.joining("&"));
    return all.isEmpty() ? "" : "?" + all;
  }

  /**
   * A field of the form.
   *
   * @param values what can be chosen; none for a day
   * @param error empty when there is none
   */
  public record Field(String name, List<String> values, String typed, String error) {}

  /** The fields with something to choose from. */
  public List<Field> choices() {
    return List.of(
        field("kind", KINDS),
        field("urgency", URGENCIES),
        field("state", STATES),
        field("channel", CHANNELS));
  }

  /** The first and the last day. */
  public List<Field> days() {
    return List.of(field("from", List.of()), field("to", List.of()));
  }

  public List<String> states() {
    return STATES;
  }

  public List<String> channels() {
    return CHANNELS;
  }

  private Field field(String name, List<String> values) {
    return new Field(name, values, typed.get(name), errors.getOrDefault(name, ""));
  }
}
