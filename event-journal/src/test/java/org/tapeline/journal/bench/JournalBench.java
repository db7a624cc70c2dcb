package org.tapeline.journal.bench;

/**
 * What the journal, the relay and the inbox can do, each beside its limit on the same servers in
 * the same run, with one, four and sixteen times the data. Started by {@code deploy/bench}.
 */
final class JournalBench {
  private static final int BASE = 10_000;

  private JournalBench() {}

  public static void main(String[] arguments) throws Exception {
    Table table = new Table();
    try (BenchJournal bench = new BenchJournal()) {
      Passing passing = new Passing(bench);
      Reading reading = new Reading(bench);
      bench.commands();
      for (int factor : new int[] {1, 4, 16}) {
        passing.fill(BASE * factor);
        int size = bench.size();
        table.add(
            "replay, against bare rows", size, Rate.inTurn(reading::replay, reading::rawRows));
        table.add(
            "relay, against a bare producer",
            size,
            Rate.inTurn(() -> passing.relay(BASE), () -> passing.rawProducer(BASE)));
        table.add(
            "effects, against rows in batches",
            size,
            Rate.inTurn(() -> passing.inbox(BASE), () -> passing.rawBatches(BASE)));
        table.add(
            "one-event commands of 8 writers, against single rows",
            size,
            Rate.inTurn(bench::commands, bench::rawInserts));
        System.out.println("measured with " + size + " events");
      }
    }
    table.print();
    System.exit(0);
  }
}
