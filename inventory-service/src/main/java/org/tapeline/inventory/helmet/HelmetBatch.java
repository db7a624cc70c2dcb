package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.Decision.Accepted;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetFreed;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetHeld;
import org.tapeline.journal.Append;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;

/**
 * Puts a hold on many helmets, or takes it off, with a few statements for all of them; in the
 * caller's transaction. What follows is the same as one by one.
 */
@ApplicationScoped
public class HelmetBatch {
  private static final String SHOW =
      """
      update helmet set state = ?, holder = ?, on_hold = ?,
             reserved_for = case when ? = 'available' then reserved_for end where tag = ?
      """;

  private final Journal journal;
  private final Database database;
  private final HelmetWatches watches;
  private final HelmetHolds holds;

  HelmetBatch(Journal journal, Database database, HelmetWatches watches, HelmetHolds holds) {
    this.journal = journal;
    this.database = database;
    this.watches = watches;
    this.holds = holds;
  }

  /** Keeps everybody else away from these helmets until the transaction ends. */
  public void lock(List<String> tags) {
    database.list(
        "select 1 from helmet where tag = any (string_to_array(?, ','))"
            + " order by tag for no key update",
        row -> 1,
        String.join(",", tags));
  }

  /** Those that are under it already, or gone for good, are passed over. */
  public void hold(List<String> tags, HelmetCommand.Hold hold, Cause cause) {
    Map<String, Helmet> after = new TreeMap<>();
    List<HelmetHeld> held = decide(tags, hold, cause, after, HelmetHeld.class);
    holds.held(held);
    watches.takenAll(held.stream().map(HelmetHeld::tag).toList(), "helmet-held", cause);
  }

  /** Those that are not under it are passed over. */
  public void free(List<String> tags, HelmetCommand.Free free, Cause cause) {
    Map<String, Helmet> after = new TreeMap<>();
    holds.freed(decide(tags, free, cause, after, HelmetFreed.class));
    Map<String, Helmet> oneOfAKind = new LinkedHashMap<>();
    after.values().stream()
        .filter(h -> h.state() == Helmet.State.AVAILABLE)
        .forEach(h -> oneOfAKind.putIfAbsent(h.model() + " " + h.size(), h));
    // Whoever waits for such a one is served as far as there are any: once for all of a kind.
    oneOfAKind.forEach((kind, h) -> watches.free(h, cause.step(cause.step() + "/" + kind)));
  }

  private <T extends HelmetEvent> List<T> decide(
      List<String> tags,
      HelmetCommand command,
      Cause cause,
      Map<String, Helmet> after,
      Class<T> type) {
    Map<String, StreamName> names =
        tags.stream().collect(Collectors.toMap(Function.identity(), HelmetDesk::stream));
    Map<StreamName, List<RecordedEvent>> lives = journal.loadAll(names.values());
    List<Append> appends = new ArrayList<>();
    List<T> all = new ArrayList<>();
    for (String tag : tags) {
      List<RecordedEvent> life = lives.getOrDefault(names.get(tag), List.of());
      Helmet helmet = Helmet.of(tag, life.stream().map(e -> (HelmetEvent) e.data()).toList());
      if (HelmetDecider.decide(helmet, command) instanceof Accepted accepted
          && !accepted.events().isEmpty()) {
        List<T> events = accepted.events().stream().map(type::cast).toList();
        List<Record> records = events.stream().map(Record.class::cast).toList();
        appends.add(new Append(names.get(tag), life.size(), records, cause));
        all.addAll(events);
        after.put(tag, HelmetDesk.evolve(helmet, accepted.events()));
      }
    }
    journal.appendAll(appends);
    show(after);
    return all;
  }

  private void show(Map<String, Helmet> after) {
    database.changeAll(
        SHOW,
        after.values().stream()
            .map(
                h -> {
                  UUID holder = h.holder().orElse(null);
                  boolean onHold = !h.holds().isEmpty();
                  return new Object[] {h.says(), holder, onHold, h.says(), h.tag()};
                })
            .toList());
  }
}
