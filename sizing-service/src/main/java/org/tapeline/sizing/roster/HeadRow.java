package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.sizing.units.Inches;
import org.tapeline.sizing.units.Millimetres;

/** A head measurement for the pages. */
@Entity
@Table(name = "head")
@IdClass(HeadRow.Key.class)
public class HeadRow extends PanacheEntityBase {
  static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.ENGLISH).withZone(ZoneOffset.UTC);
  private static final String IS_NEWEST =
      "h.version = (select max(o.version) from HeadRow o where o.player = h.player)";

  @Id public UUID player;
  @Id public long version;

  @Column(name = "value_mm")
  public double valueMm;

  @Column(name = "uncertainty_mm")
  public double uncertaintyMm;

  /** How far the first two readings lie apart. */
  @Column(name = "apart_mm")
  public Double apartMm;

  public String readings;
  public String hair;

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

  /** The day in universal time: a field's own zone is not known here. */
  public String dateSaid() {
    return DATE.format(measuredAt);
  }

  /** Newest first. */
  static List<HeadRow> of(UUID player) {
    return list("player = ?1 order by version desc", player);
  }

  /**
   * Of players who are on the roster, newest first.
   *
   * @param by staff id of the measurer; empty for those of all
   */
  static List<HeadRow> last(Optional<String> by, int most) {
    return HeadRow.<HeadRow>find(
            "from HeadRow h where exists (select 1 from PlayerRow p where p.player = h.player)"
                + " and (?1 = '' or h.measuredBy = ?1)"
                + " order by h.measuredAt desc, h.player, h.version desc",
            by.orElse(""))
        .range(0, most - 1)
        .list();
  }

  static List<HeadRow> newestOfAll() {
    return list("from HeadRow h where " + IS_NEWEST + " order by h.player");
  }

  static Map<UUID, HeadRow> newestOf(Collection<UUID> players) {
    return HeadRow.<HeadRow>list("from HeadRow h where h.player in ?1 and " + IS_NEWEST, players)
        .stream()
        .collect(Collectors.toMap(head -> head.player, head -> head));
  }
}
