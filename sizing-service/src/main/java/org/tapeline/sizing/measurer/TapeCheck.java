package org.tapeline.sizing.measurer;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.tapeline.sizing.growth.Age;
import org.tapeline.sizing.growth.GrowthReference;
import org.tapeline.sizing.growth.Sex;
import org.tapeline.sizing.units.Interval95;
import org.tapeline.sizing.units.Millimetres;

/** Compares a measurer's heads with those that others recorded. */
@ApplicationScoped
class TapeCheck {
  /** How unevenly children grow within half a year, mm: an assumption, no source. */
  private static final double GROWTH_SPREAD_MM = 1.5;

  /** Fewer heads of others say nothing about where the association lies. */
  private static final int FEWEST_OTHERS = 20;

  private static final String HEADS =
      """
      select h.value_mm as mm, h.uncertainty_mm as pm, h.measured_at as at,
             p.birth_date as birth, p.sex as sex,
             o.value_mm as other_mm, o.uncertainty_mm as other_pm, o.measured_at as other_at
        from head h join player p on p.player = h.player
        left join lateral (
          select value_mm, uncertainty_mm, measured_at from head o
           where o.player = h.player and o.measured_by <> h.measured_by
             and abs(extract(epoch from o.measured_at - h.measured_at)) < 180 * 86400
           order by abs(extract(epoch from o.measured_at - h.measured_at)) limit 1) o on true
       where h.measured_by = ?1 order by h.measured_at desc limit ?2
      """;
  private static final String OTHERS =
      """
      select h.value_mm as mm, h.measured_at as at, p.birth_date as birth, p.sex as sex
        from head h join player p on p.player = h.player
       where h.measured_by <> ?1 order by h.measured_at desc limit 2000
      """;

  private final EntityManager entities;
  private final GrowthReference growth;

  TapeCheck(EntityManager entities, GrowthReference growth) {
    this.entities = entities;
    this.growth = growth;
  }

  /** How much larger than the reference's median the heads of others are. */
  private record Level(int heads, double mm, double spreadMm) {}

  TapeBias bias(String by, int newest) {
    Level level = levelOfOthers(by);
    List<TapeBias.Head> heads = new ArrayList<>();
    for (Tuple row : rows(HEADS, by, newest)) {
      head(row, level).ifPresent(heads::add);
    }
    return TapeBias.of(heads);
  }

  private Optional<TapeBias.Head> head(Tuple row, Level level) {
    Double other = row.get("other_mm", Double.class);
    if (other != null) {
      double grown = median(row, "at") - median(row, "other_at");
      double spread =
          Math.sqrt(
              variance(row.get("pm", Double.class))
                  + variance(row.get("other_pm", Double.class))
                  + GROWTH_SPREAD_MM * GROWTH_SPREAD_MM);
      return Optional.of(new TapeBias.Head(row.get("mm", Double.class) - other - grown, spread));
    }
    return level.heads() < FEWEST_OTHERS
        ? Optional.empty()
        : Optional.of(new TapeBias.Head(aboveMedian(row) - level.mm(), level.spreadMm()));
  }

  private Level levelOfOthers(String by) {
    double[] above = rows(OTHERS, by).stream().mapToDouble(this::aboveMedian).toArray();
    double mean = Arrays.stream(above).average().orElse(0);
    double squares = Arrays.stream(above).map(a -> (a - mean) * (a - mean)).sum();
    return new Level(above.length, mean, Math.sqrt(squares / Math.max(1, above.length - 1)));
  }

  private double aboveMedian(Tuple row) {
    return row.get("mm", Double.class) - median(row, "at");
  }

  private double median(Tuple row, String at) {
    LocalDate birth = row.get("birth", LocalDate.class);
    LocalDate day = row.get(at, Instant.class).atZone(ZoneOffset.UTC).toLocalDate();
    Millimetres head =
        growth.headAt(Sex.of(row.get("sex", String.class)), Age.years(birth, day), 0.5);
    return head.value();
  }

  private static double variance(double plusMinus) {
    return Math.pow(Interval95.spread(plusMinus), 2);
  }

  @SuppressWarnings("unchecked")
  private List<Tuple> rows(String query, Object... with) {
    var prepared = entities.createNativeQuery(query, Tuple.class);
    for (int i = 0; i < with.length; i++) {
      prepared.setParameter(i + 1, with[i]);
    }
    return prepared.getResultList();
  }
}
