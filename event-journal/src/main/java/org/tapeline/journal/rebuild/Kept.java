package org.tapeline.journal.rebuild;

import java.util.Map;
import java.util.TreeMap;

/**
 * Tables of a service that are not rebuilt, each with the reason: they are the truth of something
 * themselves, or say how far a process has come.
 */
public final class Kept {
  private final Map<String, String> tables = new TreeMap<>();

  private Kept() {}

  /** With what every service has of the journal itself. */
  public static Kept besideTheJournal() {
    return new Kept()
        .table("journal", "the truth itself")
        .table("journal_unsent", "what the relay has still to send")
        .table("current_state", "the truth of what is published without a history")
        .table("inbox_position", "how far the service has come in its peers' streams")
        .table("inbox_parked", "records that could not be applied yet")
        .table("command_log", "commands that were done, with their answers")
        .table("flyway_schema_history", "which migrations were done");
  }

  public Kept table(String name, String why) {
    tables.put(name, why);
    return this;
  }

  /** The reasons by table. */
  public Map<String, String> tables() {
    return Map.copyOf(tables);
  }
}
