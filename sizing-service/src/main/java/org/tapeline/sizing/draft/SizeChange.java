package org.tapeline.sizing.draft;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.units.Inches;
import org.tapeline.sizing.units.Millimetres;

/**
 * What a draft makes of a size.
 *
 * @param now empty when the size is new
 * @param then empty when the size would be dropped
 */
public record SizeChange(String size, Optional<SizeRange> now, Optional<SizeRange> then) {

  /** All sizes of the draft, small to large, then those that it drops. */
  public static List<SizeChange> between(List<SizeRange> now, List<SizeRange> then) {
    Stream<SizeChange> kept =
        then.stream()
            .map(range -> new SizeChange(range.size(), of(now, range.size()), Optional.of(range)));
    Stream<SizeChange> dropped =
        now.stream()
            .filter(range -> of(then, range.size()).isEmpty())
            .map(range -> new SizeChange(range.size(), Optional.of(range), Optional.empty()));
    return Stream.concat(kept, dropped).toList();
  }

  private static Optional<SizeRange> of(List<SizeRange> ranges, String size) {
    return ranges.stream().filter(range -> range.size().equals(size)).findFirst();
  }

  /** In words, such as {@code Starts 5 mm lower, ends 2.5 mm higher}. */
  public String said() {
    if (now.isEmpty()) {
      return "New size";
    }
    if (then.isEmpty()) {
      return "Dropped";
    }
    if (now.get().sameAs(then.get())) {
      return "No change";
    }
    List<String> moved = new ArrayList<>();
    moved("starts", now.get().from(), then.get().from()).ifPresent(moved::add);
    moved("ends", now.get().to(), then.get().to()).ifPresent(moved::add);
    String words = moved.isEmpty() ? "less than 0.01 mm" : String.join(", ", moved);
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private static Optional<String> moved(String end, Millimetres now, Millimetres then) {
    String by = hundredths(now.apartFrom(then));
    return by.equals("0")
        ? Optional.empty()
        : Optional.of(end + " " + by + " mm " + (now.compareTo(then) > 0 ? "lower" : "higher"));
  }

  /** Such as {@code 520.5 to 556 mm}; a dash where there is none. */
  public static String millimetres(Optional<SizeRange> range) {
    return range
        .map(r -> Stream.of(r.from(), r.to()).map(SizeChange::hundredths))
        .map(ends -> ends.collect(Collectors.joining(" to ", "", " mm")))
        .orElse("–");
  }

  /** To the nearest sixteenth; empty where there is none. */
  public static String inches(Optional<SizeRange> range) {
    return range.map(r -> Inches.say(r.from()) + " to " + Inches.say(r.to())).orElse("");
  }

  private static String hundredths(Millimetres length) {
    return BigDecimal.valueOf(length.value())
        .setScale(2, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
