package org.tapeline.proof.fuzz;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Lines of the report, each what was tried and what came of it; said at once and again at the end.
 */
final class Told {
  private final PrintStream out;
  private final List<String> lines = new ArrayList<>();

  Told(PrintStream out) {
    this.out = out;
  }

  void line(String form, Object... values) {
    String line = String.format(Locale.ROOT, form, values);
    lines.add(line);
    out.println("  " + line);
  }

  void print() {
    out.println();
    lines.forEach(out::println);
  }
}
