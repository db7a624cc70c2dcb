package org.tapeline.inventory.label;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * For which helmets labels are wanted; what is empty does not matter, and nothing said is none.
 *
 * @param typed tags as they were typed, one a line or with commas between
 * @param delivery tags that were reserved together, or helmets that were taken in together without
 *     one; what is no id counts as empty
 */
public record Wanted(
    String place,
    String model,
    String size,
    String state,
    String lot,
    String typed,
    String delivery) {
  public Wanted {
    place = said(place);
    model = said(model);
    size = said(size);
    state = said(state);
    lot = said(lot);
    typed = said(typed);
    delivery = said(delivery);
  }

  private static String said(String text) {
    return text == null ? "" : text.strip();
  }

  public boolean isFiltered() {
    return !(place + model + size + state + lot).isEmpty();
  }

  public List<String> tags() {
    return Arrays.stream(typed.split("[\\n,;]"))
        .map(String::strip)
        .filter(t -> !t.isEmpty())
        .toList();
  }

  Optional<UUID> run() {
    try {
      return Optional.of(UUID.fromString(delivery));
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }

  /** As it stands in an address. */
  public String query() {
    return "?place=%s&model=%s&size=%s&state=%s&lot=%s&delivery=%s"
        .formatted(
            encoded(place),
            encoded(model),
            encoded(size),
            encoded(state),
            encoded(lot),
            encoded(delivery));
  }

  private static String encoded(String text) {
    return URLEncoder.encode(text, StandardCharsets.UTF_8);
  }
}
