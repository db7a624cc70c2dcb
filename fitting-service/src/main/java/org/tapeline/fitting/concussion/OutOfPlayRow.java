package org.tapeline.fitting.concussion;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.concussion.ConcussionEvent.ConcussionSuspected;
import org.tapeline.fitting.concussion.ConcussionEvent.ReturnCleared;

/** Who is out of play. */
@Entity
@Table(name = "out_of_play")
public class OutOfPlayRow extends PanacheEntityBase {
  @Id public UUID player;
  public Instant since;

  static void show(ConcussionEvent event) {
    OutOfPlayRow row = findById(event.player());
    switch (event) {
      case ConcussionSuspected e -> suspected(row, e);
      case ReturnCleared e -> {
        if (row != null) {
          row.delete();
        }
      }
    }
    flush();
  }

  /** Said again, it has been so since the first time. */
  private static void suspected(OutOfPlayRow row, ConcussionSuspected event) {
    if (row == null) {
      OutOfPlayRow out = new OutOfPlayRow();
      out.player = event.player();
      out.since = event.at();
      out.persist();
    }
  }

  static List<OutOfPlayRow> of(Collection<UUID> players) {
    return players.isEmpty() ? List.of() : list("player in ?1", players);
  }
}
