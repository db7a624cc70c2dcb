package org.tapeline.fitting.roster;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** How codes and moments are said to people. */
public final class Words {
  private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("h:mm a", Locale.US);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("EEEE, MMMM d", Locale.US);

  private Words() {}

  /** {@code youth-medium} is said {@code Youth medium}. */
  public static String size(String code) {
    return sentence(code.replace("x-large", "extra large").replace('-', ' '));
  }

  /** {@code model-a} is said {@code Model A}. */
  public static String model(String code) {
    int last = code.lastIndexOf('-') + 1;
    return sentence(code.substring(0, last).replace('-', ' '))
        + code.substring(last).toUpperCase(Locale.ROOT);
  }

  /** {@code jaw-pad-15mm} is said {@code Jaw pad 15 mm}. */
  public static String item(String code) {
    return sentence(code.replace('-', ' ').replaceAll("([0-9])mm\\b", "$1 mm"));
  }

  /** The hour at a place; where the place is not known, in UTC and said so. */
  public static String time(Instant at, ZoneId zone) {
    return TIME.format(at.atZone(zone)) + (zone.equals(ZoneOffset.UTC) ? " UTC" : "");
  }

  public static String time(LocalTime time) {
    return TIME.format(time);
  }

  public static String day(Instant at, ZoneId zone) {
    return DAY.format(at.atZone(zone));
  }

  private static String sentence(String words) {
    return words.isEmpty()
        ? ""
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
