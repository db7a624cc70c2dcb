package org.tapeline.notify.trace;

import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.Map;
import org.tapeline.notify.words.TradeWords;

/**
 * How codes, times and recipients are said on the manager's pages.
 *
 * @param names by recipient
 * @param zone that of most places
 */
public record Wording(Map<String, String> names, ZoneId zone) {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss z", Locale.US);
  private static final DateTimeFormatter TO_THE_MILLI =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss.SSS", Locale.ROOT);

  public String who(String recipient) {
    return names.get(recipient);
  }

  public String time(Instant at) {
    return TIME.format(at.atZone(zone));
  }

  public String exactly(Instant at) {
    return TO_THE_MILLI.format(at.atZone(zone));
  }

  /** {@code refit-date} becomes {@code Re-fit date}. */
  public String word(String code) {
    return TradeWords.title(code);
  }

  /** The shared colours of a state; the words stand beside. */
  public String tone(String state) {
    return switch (state) {
      case "sent", "acknowledged" -> "may-wear";
      case "undeliverable" -> "do-not-wear";
      case "raised" -> "check-today";
      default -> "unknown";
    };
  }
}
