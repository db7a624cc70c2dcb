package org.tapeline.fitting.recheck;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.recheck.RecheckCauseEvent.HairChanged;

/** The newest change of a player's hair. */
@Entity
@Table(name = "hair_change")
public class HairChangeRow extends PanacheEntityBase {
  @Id public UUID player;
  public String hair;
  public Instant at;

  static void show(HairChanged event) {
    HairChangeRow row = findById(event.player());
    if (row == null) {
      row = new HairChangeRow();
      row.player = event.player();
    }
    row.hair = event.hair();
    row.at = event.at();
    row.persistAndFlush();
  }

  public static List<HairChangeRow> of(Collection<UUID> players) {
    return players.isEmpty() ? List.of() : list("player in ?1", players);
  }
}
