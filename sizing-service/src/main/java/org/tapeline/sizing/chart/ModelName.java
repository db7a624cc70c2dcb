package org.tapeline.sizing.chart;

import java.util.Locale;

/** How a helmet model's code is said. */
public final class ModelName {
  private ModelName() {}

  /** {@code model-a} is said {@code Model A}. */
  public static String said(String code) {
    int last = code.lastIndexOf('-') + 1;
    String words = code.substring(0, last).replace('-', ' ');
    String end = code.substring(last).toUpperCase(Locale.ROOT);
    return words.isEmpty()
        ? end
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + end;
  }
}
