package org.tapeline.sizing.units;

/** Says a length as a tape in inches shows it: whole inches and sixteenths. */
public final class Inches {
  private static final int PARTS = 16;

  private Inches() {}

  /** The nearest sixteenth, such as {@code 22 7/8 in}. */
  public static String say(Millimetres length) {
    long parts = Math.round(length.inches() * PARTS);
    long whole = parts / PARTS;
    long rest = parts % PARTS;
    if (rest == 0) {
      return whole + " in";
    }
    long below = PARTS;
    while (rest % 2 == 0) {
      rest /= 2;
      below /= 2;
    }
    return whole + " " + rest + "/" + below + " in";
  }
}
