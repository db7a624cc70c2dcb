package org.tapeline.sizing.mix;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tapeline.sizing.growth.Age;
import org.tapeline.sizing.growth.GrowthReference;
import org.tapeline.sizing.growth.Projection;
import org.tapeline.sizing.growth.Sex;
import org.tapeline.sizing.units.Interval95;
import org.tapeline.sizing.units.Millimetres;

/** The players of the roster as the size mix counts them on a day. */
@ApplicationScoped
class Roster {
  /** Measured longer ago than this before the day that counts, a head is called stale. */
  private static final int STALE_DAYS = 365;

  private static final NormalDistribution NORMAL = NormalDistribution.of(0, 1);
  private static final String PLAYERS =
      """
      select p.birth_date as birth, p.sex as sex,
             h.value_mm as mm, h.uncertainty_mm as pm, h.measured_at as at
        from player p left join lateral (
          select value_mm, uncertainty_mm, measured_at from head h
           where h.player = p.player order by version desc limit 1) h on true
      """;

  private final EntityManager entities;
  private final GrowthReference growth;

  Roster(EntityManager entities, GrowthReference growth) {
    this.entities = entities;
    this.growth = growth;
  }

  /**
   * The roster on a day.
   *
   * @param stale how many of the known heads were measured more than a year before
   */
  record OnDay(
      List<SizeMix.Known> known,
      int stale,
      List<SizeMix.Unknown> unknown,
      List<OwnHeads.Head> own) {}

  OnDay on(LocalDate day) {
    List<SizeMix.Known> known = new ArrayList<>();
    List<SizeMix.Unknown> unknown = new ArrayList<>();
    List<OwnHeads.Head> own = new ArrayList<>();
    int stale = 0;
    for (Tuple row : rows()) {
      LocalDate birth = row.get("birth", LocalDate.class);
      Optional<Sex> sex = Sex.of(row.get("sex", String.class));
      if (row.get("mm") == null) {
        unknown.add(new SizeMix.Unknown(sex, Age.years(birth, day)));
        continue;
      }
      Projection.Measured head = measured(row);
      Projection then = Projection.of(growth, sex, birth, head, day);
      known.add(new SizeMix.Known(then.mm(), then.spreadMm()));
      own.add(own(sex, birth, head));
      stale += head.on().plusDays(STALE_DAYS).isBefore(day) ? 1 : 0;
    }
    return new OnDay(known, stale, unknown, own);
  }

  private static Projection.Measured measured(Tuple row) {
    return new Projection.Measured(
        new Millimetres(row.get("mm", Double.class)),
        Interval95.spread(row.get("pm", Double.class)),
        row.get("at", Instant.class).atZone(ZoneOffset.UTC).toLocalDate());
  }

  private OwnHeads.Head own(Optional<Sex> sex, LocalDate birth, Projection.Measured head) {
    double age = Age.years(birth, head.on());
    double below = Math.clamp(growth.below(sex, age, head.head()), 1e-6, 1 - 1e-6);
    return new OwnHeads.Head(
        OwnHeads.Group.of(sex, age), NORMAL.inverseCumulativeProbability(below));
  }

  @SuppressWarnings("unchecked")
  private List<Tuple> rows() {
    return entities.createNativeQuery(PLAYERS, Tuple.class).getResultList();
  }
}
