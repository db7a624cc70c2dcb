package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.sizing.units.Inches;
import org.tapeline.sizing.units.Millimetres;

/** A head measurement for the pages. */
@Entity
@Table(name = "head")
@IdClass(HeadRow.Key.class)
public class HeadRow extends PanacheEntityBase {
  @Id public UUID player;
  @Id public long version;

  @Column(name = "value_mm")
  public double valueMm;

  @Column(name = "uncertainty_mm")
  public double uncertaintyMm;

  public String readings;

  @Column(name = "measured_by")
  public String measuredBy;

  @Column(name = "measured_at")
  public Instant measuredAt;

  /** Both together. */
  public record Key(UUID player, long version) implements Serializable {}

  public String inches() {
    return Inches.say(new Millimetres(valueMm));
  }

  public long millimetres() {
    return Math.round(valueMm);
  }

  public long plusMinus() {
    return Math.round(Math.ceil(uncertaintyMm));
  }

  /** Newest first. */
  static List<HeadRow> of(UUID player) {
    return list("player = ?1 order by version desc", player);
  }

  static Optional<HeadRow> newest(UUID player) {
    return find("player = ?1 order by version desc", player).firstResultOptional();
  }

  static List<HeadRow> newestOfAll() {
    return list(
        "from HeadRow h where h.version = (select max(o.version) from HeadRow o"
            + " where o.player = h.player) order by h.player");
  }
}
