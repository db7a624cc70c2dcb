package org.tapeline.inventory.desk;

import java.util.Comparator;
import java.util.List;

/** Size words from small to large, youth before adult; what is no such word comes last, by name. */
final class SizeOrder {
  private static final List<String> STEPS =
      List.of("xx-small", "x-small", "small", "medium", "large", "x-large", "xx-large");

  private SizeOrder() {}

  static Comparator<String> smallFirst() {
    return Comparator.comparingInt(SizeOrder::age)
        .thenComparingInt(SizeOrder::step)
        .thenComparing(Comparator.naturalOrder());
  }

  private static int age(String size) {
    return size.startsWith("youth") ? 0 : size.startsWith("adult") ? 1 : 2;
  }

  private static int step(String size) {
    int step = STEPS.indexOf(size.substring(size.indexOf('-') + 1));
    return step >= 0 ? step : STEPS.contains(size) ? STEPS.indexOf(size) : STEPS.size();
  }
}
