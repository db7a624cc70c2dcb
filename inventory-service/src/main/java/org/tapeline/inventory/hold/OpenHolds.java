package org.tapeline.inventory.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetFreed;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetHeld;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetReceived;
import org.tapeline.inventory.helmet.HelmetHolds;

/** The open holds, as the helmets' records are kept by them. */
@ApplicationScoped
public class OpenHolds implements HelmetHolds {
  private static final String RECEIVING = "helmets come";
  private static final String COVERING =
      """
      select hold from hold o
       where open and (exists (select 1 from hold_tag t where t.tag = ? and t.hold = o.hold)
          or hold_covers(o.model, o.lots, o.made_from, o.made_to, ?, ?, ?)
             and not ? = any (o.lifted_lots))
       order by placed_at, hold
      """;
  private static final String HELD =
      """
      insert into hold_helmet as h (hold, tag, player, place, step, held_at)
        values (?, ?, ?, ?, 'held', ?)
      on conflict (hold, tag) do update
        set player = excluded.player, place = excluded.place, step = 'held',
            held_at = excluded.held_at
        where h.step = 'due'
      """;

  private final Database database;

  OpenHolds(Database database) {
    this.database = database;
  }

  /**
   * Waits for receipts that are under way, and lets no new one begin until the transaction ends.
   */
  void letNoneCome() {
    database.lock(RECEIVING);
  }

  @Override
  public Set<UUID> due(String tag) {
    return new HashSet<>(
        database.list(
            "select hold from hold_helmet where tag = ? and step = 'due'",
            row -> row.getObject(1, UUID.class),
            tag));
  }

  @Override
  public Set<UUID> covering(HelmetReceived e) {
    database.lockShared(RECEIVING);
    return new HashSet<>(
        database.list(
            COVERING,
            row -> row.getObject(1, UUID.class),
            e.tag(),
            e.model(),
            e.lot(),
            e.manufacturedOn(),
            e.lot()));
  }

  @Override
  public void held(List<HelmetHeld> held) {
    database.changeAll(
        HELD,
        held.stream()
            .map(e -> new Object[] {e.hold(), e.tag(), e.player().orElse(null), e.place(), e.at()})
            .toList());
  }

  @Override
  public void freed(List<HelmetFreed> freed) {
    database.changeAll(
        "update hold_helmet set step = 'freed' where hold = ? and tag = ?",
        freed.stream().map(e -> new Object[] {e.hold(), e.tag()}).toList());
  }
}
