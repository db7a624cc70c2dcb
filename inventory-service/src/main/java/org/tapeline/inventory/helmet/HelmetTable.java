package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import org.tapeline.inventory.database.Database;

/** The table of helmets, as their events fill it; always in the caller's transaction. */
@ApplicationScoped
class HelmetTable {
  private final Database database;

  HelmetTable(Database database) {
    this.database = database;
  }

  /**
   * @param state where the helmet stands after the event
   */
  void show(HelmetEvent event, Helmet state) {
    showState(event, state);
    countMarks(event);
  }

  private void showState(HelmetEvent event, Helmet state) {
    if (event instanceof HelmetEvent.HelmetOrdered e) {
      database.change(
          "insert into helmet (tag, model, size, lot, expected_on, place, state)"
              + " values (?, ?, ?, '', ?, ?, 'ordered')",
          e.tag(),
          e.model(),
          e.size(),
          e.expectedOn().orElse(null),
          e.place());
    } else if (event instanceof HelmetEvent.HelmetReceived e) {
      database.change(
          """
          insert into helmet
              (tag, model, size, lot, manufactured_on, certified_until, place, state)
            values (?, ?, ?, ?, ?, ?, ?, 'available')
            on conflict (tag) do update
            set model = excluded.model, size = excluded.size, lot = excluded.lot,
                manufactured_on = excluded.manufactured_on,
                certified_until = excluded.certified_until, place = excluded.place,
                state = excluded.state, expected_on = null
          """,
          e.tag(),
          e.model(),
          e.size(),
          e.lot(),
          e.manufacturedOn(),
          e.certifiedUntil().orElse(null),
          e.place());
    } else if (state.state() != Helmet.State.UNKNOWN) {
      database.change(
          """
          update helmet set state = ?, place = ?, holder = ?, certified_until = ?, on_hold = ?,
                 reserved_for = case when ? = 'available' then reserved_for end where tag = ?
          """,
          state.says(),
          state.place(),
          state.holder().orElse(null),
          state.certifiedUntil().orElse(null),
          !state.holds().isEmpty(),
          state.says(),
          state.tag());
    }
  }

  /** Reports of marks on the surface since it was last reconditioned: the search weighs them. */
  private void countMarks(HelmetEvent event) {
    if (event instanceof HelmetEvent.DamageReported e && e.severity().equals("cosmetic")) {
      database.change("update helmet set marks = marks + 1 where tag = ?", e.tag());
    } else if (event instanceof HelmetEvent.HelmetCameBack e) {
      database.change("update helmet set marks = 0 where tag = ?", e.tag());
    }
  }
}
