package org.tapeline.proof.faults.compare;

import java.sql.SQLException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.season.Ledger;
import org.tapeline.proof.faults.season.Ledger.Entry;
import org.tapeline.proof.faults.season.Ledger.Outcome;

/**
 * What was accepted has led to just the events that it must lead to, however often it was sent;
 * what was refused to none.
 */
final class CommandsOnce implements Check {
  private static final String NAME = "commands";

  private final List<Entry> entries;

  CommandsOnce(Ledger ledger) {
    this.entries = ledger.all();
  }

  @Override
  public void look(Evidence evidence, Findings findings) throws SQLException {
    Map<String, Integer> found = new HashMap<>();
    Map<UUID, Integer> any = new HashMap<>();
    for (Event event : evidence.all()) {
      found.merge(event.causation() + " " + event.type(), 1, Integer::sum);
      any.merge(event.causation(), 1, Integer::sum);
    }
    for (Entry entry : entries) {
      switch (entry.outcome()) {
        case ACCEPTED -> accepted(entry, found, findings);
        case REFUSED -> refused(entry, any, findings);
        case UNKNOWN -> findings.lost(NAME, "never answered: " + entry);
      }
    }
    findings.looked("accepted commands", count(Outcome.ACCEPTED));
    findings.looked("refused commands", count(Outcome.REFUSED));
    for (Part service : Part.SERVICES) {
      answered(service, evidence, findings);
    }
  }

  private long count(Outcome outcome) {
    return entries.stream().filter(entry -> entry.outcome() == outcome).count();
  }

  private static void accepted(Entry entry, Map<String, Integer> found, Findings findings) {
    entry
        .command()
        .events()
        .forEach(
            (type, times) -> {
              int there = found.getOrDefault(entry.command().id() + " " + type, 0);
              String what = entry + ": " + type + " must be there " + times + " times, is " + there;
              if (there < times) {
                findings.lost(NAME, what);
              } else if (there > times) {
                findings.doubled(NAME, what);
              }
            });
  }

  private static void refused(Entry entry, Map<UUID, Integer> any, Findings findings) {
    if (any.containsKey(entry.command().id())) {
      findings.differing(NAME, "refused and yet done: " + entry + ": " + entry.answer());
    }
  }

  /** The service's own note of the command says the same. */
  private void answered(Part service, Evidence evidence, Findings findings) throws SQLException {
    Map<String, String> noted = new HashMap<>();
    evidence
        .rows(service, "select command_id, status from command_log")
        .forEach(row -> noted.put(row.get("command_id"), row.get("status")));
    for (Entry entry : entries) {
      boolean byStaff = entry.command().user().isPresent();
      if (entry.command().service() == service && entry.accepted() && byStaff) {
        String status = noted.getOrDefault(entry.command().id().toString(), "none");
        findings.same(NAME, "note of " + entry, Integer.toString(entry.status()), status);
      }
    }
  }
}
