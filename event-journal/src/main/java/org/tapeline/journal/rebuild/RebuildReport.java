package org.tapeline.journal.rebuild;

import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** What a rebuild says to the person who started it. */
public final class RebuildReport {
  private static final long EVERY_NANOS = 1_000_000_000L;

  private final String service;
  private final PrintStream out;
  private final long began = System.nanoTime();
  private long said = began;

  public RebuildReport(String service, PrintStream out) {
    this.service = service;
    this.out = out;
  }

  /**
   * @param names of read models; {@code all} for all
   * @throws IllegalStateException when one is not known
   */
  public static List<ReadModel> chosen(List<ReadModel> models, List<String> names) {
    TreeSet<String> known =
        models.stream().map(ReadModel::name).collect(Collectors.toCollection(TreeSet::new));
    for (String name : names) {
      if (!name.equals("all") && !known.contains(name)) {
        throw new IllegalStateException(
            "There is no read model " + name + ". There are: " + String.join(", ", known) + ".");
      }
    }
    return models.stream()
        .filter(model -> names.contains("all") || names.contains(model.name()))
        .toList();
  }

  /** A line a second at most, and one at the end. */
  public void progress(long done, long total) {
    long now = System.nanoTime();
    if (now - said < EVERY_NANOS && done < total) {
      return;
    }
    said = now;
    double seconds = Math.max(0.001, (now - began) / 1e9);
    double speed = done / seconds;
    long left = speed > 0 ? Math.round((total - done) / speed) : 0;
    out.printf(
        Locale.ENGLISH,
        "%s: %,d of %,d events, %,.0f a second, %d s left%n",
        service,
        done,
        total,
        speed,
        left);
  }

  public void results(List<TableResult> results, boolean compareOnly) {
    out.printf(
        "%-13s %-20s %10s %10s %10s %8s %8s %8s%n",
        "read model", "table", "rows", "equal", "differing", "missing", "extra", "changed");
    for (TableResult r : results) {
      out.printf(
          Locale.ENGLISH,
          "%-13s %-20s %,10d %,10d %,10d %,8d %,8d %,8d%n",
          r.model(),
          r.table(),
          r.rows(),
          r.equal(),
          r.differing(),
          r.missing(),
          r.extra(),
          r.changed());
      r.examples().forEach(example -> out.println("    " + example));
      if (r.old() > 0) {
        out.printf(Locale.ENGLISH, "    %,d rows are not kept any more%n", r.old());
      }
    }
    long differing = results.stream().mapToLong(TableResult::differing).sum();
    out.printf(
        Locale.ENGLISH,
        "%s: %d tables, %,d rows, %,d differing%s%n",
        service,
        results.size(),
        results.stream().mapToLong(TableResult::rows).sum(),
        differing,
        end(differing, compareOnly));
  }

  private static String end(long differing, boolean compareOnly) {
    if (differing == 0) {
      return "";
    }
    return compareOnly ? "; nothing was changed" : "; put right";
  }

  public void failed(RuntimeException why) {
    out.println(service + ": not rebuilt, nothing was changed. " + why.getMessage());
  }
}
