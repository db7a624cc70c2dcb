package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.tapeline.sizing.units.Inches;
import org.tapeline.sizing.units.Millimetres;

/** What a head was held to be until it was corrected or withdrawn. */
@Entity
@Table(name = "head_correction")
@IdClass(CorrectionRow.Key.class)
public class CorrectionRow extends PanacheEntityBase {
  @Id public UUID player;
  @Id public long version;

  /** The version of the head. */
  public long corrects;

  public boolean withdrawn;

  @Column(name = "was_mm")
  public double wasMm;

  @Column(name = "was_readings")
  public String wasReadings;

  public String why;

  @Column(name = "measured_by")
  public String measuredBy;

  @Column(name = "measured_at")
  public Instant measuredAt;

  @Column(name = "corrected_by")
  public String correctedBy;

  @Column(name = "corrected_at")
  public Instant correctedAt;

  /** Both together. */
  public record Key(UUID player, long version) implements Serializable {}

  /** Of the head as it stands. */
  static CorrectionRow of(HeadRow head, long version) {
    CorrectionRow row = new CorrectionRow();
    row.player = head.player;
    row.version = version;
    row.corrects = head.version;
    row.wasMm = head.valueMm;
    row.wasReadings = head.readings;
    row.measuredBy = head.measuredBy;
    row.measuredAt = head.measuredAt;
    return row;
  }

  public String wasInches() {
    return Inches.say(new Millimetres(wasMm));
  }

  public long wasMillimetres() {
    return Math.round(wasMm);
  }

  public String whySaid() {
    return CorrectionReason.of(why).map(CorrectionReason::said).orElse(why);
  }

  /** The day in universal time: a field's own zone is not known here. */
  public String dateSaid() {
    return HeadRow.DATE.format(correctedAt);
  }

  public String measuredDateSaid() {
    return HeadRow.DATE.format(measuredAt);
  }

  /** Heads that do not count any more, newest first. */
  static List<CorrectionRow> withdrawn(UUID player) {
    return list("player = ?1 and withdrawn order by version desc", player);
  }

  /** Oldest first. */
  static List<CorrectionRow> of(Collection<UUID> players) {
    return list("player in ?1 order by version", players);
  }
}
