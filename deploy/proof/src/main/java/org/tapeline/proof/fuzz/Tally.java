package org.tapeline.proof.fuzz;

import java.io.PrintStream;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Counts what was tried and keeps what was wrong, each kind of wrong once with a way to repeat it.
 */
final class Tally {
  private static final List<String> CLASSES = List.of("2xx", "3xx", "4xx", "5xx", "none");

  private final Map<String, Map<String, Integer>> counts = new TreeMap<>();
  private final Map<String, Violation> violations = new LinkedHashMap<>();

  /**
   * Something that must not be.
   *
   * @param where the endpoint or topic
   * @param what was wrong with the answer
   * @param with what was wrong in the request
   * @param repeat how to see it again
   */
  record Violation(String where, String what, String with, String repeat) {}

  private final Map<String, Integer> times = new TreeMap<>();

  synchronized void count(String row, String column) {
    counts.computeIfAbsent(row, r -> new TreeMap<>()).merge(column, 1, Integer::sum);
  }

  synchronized void count(String row, int status) {
    count(row, status == 0 ? "none" : status / 100 + "xx");
  }

  synchronized void violated(Violation violation) {
    String same = violation.where() + " " + violation.what();
    violations.putIfAbsent(same, violation);
    times.merge(same, 1, Integer::sum);
  }

  synchronized Collection<Violation> violations() {
    return List.copyOf(violations.values());
  }

  synchronized void print(PrintStream out) {
    out.printf("%-22s", "service, kind");
    CLASSES.forEach(name -> out.printf("%8s", name));
    out.printf("%8s%n", "all");
    Map<String, Integer> sums = new TreeMap<>();
    counts.forEach((row, columns) -> printRow(out, row, columns, sums));
    printRow(out, "all", sums, new TreeMap<>());
    for (Map.Entry<String, Violation> each : violations.entrySet()) {
      Violation v = each.getValue();
      out.printf("%n%s: %s (%d times)%n", v.where(), v.what(), times.get(each.getKey()));
      out.printf("  with %s%n  %s%n", v.with(), v.repeat());
    }
    out.printf("%nviolations %d%n", violations.size());
  }

  private static void printRow(
      PrintStream out, String row, Map<String, Integer> columns, Map<String, Integer> sums) {
    out.printf("%-22s", row);
    int all = 0;
    for (String name : CLASSES) {
      int count = columns.getOrDefault(name, 0);
      out.printf("%8d", count);
      sums.merge(name, count, Integer::sum);
      all += count;
    }
    out.printf("%8d%n", all);
  }

  /** Rows with a prefix, such as those of one service. */
  synchronized List<String> rows() {
    return new ArrayList<>(counts.keySet());
  }
}
