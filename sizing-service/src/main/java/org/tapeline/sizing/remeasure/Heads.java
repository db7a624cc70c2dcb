package org.tapeline.sizing.remeasure;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.sizing.chart.Charts;
import org.tapeline.sizing.chart.ModelName;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.growth.Age;
import org.tapeline.sizing.growth.GrowthReference;
import org.tapeline.sizing.growth.Outgrowth;
import org.tapeline.sizing.growth.Projection;
import org.tapeline.sizing.growth.Sex;
import org.tapeline.sizing.units.Interval95;
import org.tapeline.sizing.units.Millimetres;

/** The newest heads with what growth makes of them. */
@ApplicationScoped
public class Heads {
  /** The size that passed last counts, else the first that is advised. */
  private static final String HEADS =
      """
      select p.player as player, p.number as number, p.given_name || ' ' || p.family_name as name,
             p.team as team, p.field as field, p.birth_date as birth, p.sex as sex,
             h.version as version, h.value_mm as mm, h.uncertainty_mm as pm, h.measured_at as at,
             coalesce(s.model, a.model) as model, coalesce(s.size, a.size) as size
        from player p
        join lateral (select * from head h where h.player = p.player
                       order by version desc limit 1) h on true
        left join passed_size s on s.player = p.player
        left join lateral (select model, size from advice a
                            where a.player = p.player and a.size is not null
                            order by model limit 1) a on true
      """;

  private final EntityManager entities;
  private final Charts charts;
  private final GrowthReference growth;
  private final Clock clock;
  private final MonthDay seasonEnd;
  private final double risk;

  Heads(
      EntityManager entities,
      Charts charts,
      GrowthReference growth,
      Clock clock,
      @ConfigProperty(name = "tapeline.season-end", defaultValue = "11-30") String seasonEnd,
      @ConfigProperty(name = "tapeline.remeasure-risk", defaultValue = "0.10") double risk) {
    this.entities = entities;
    this.charts = charts;
    this.growth = growth;
    this.clock = clock;
    this.seasonEnd = MonthDay.parse("--" + seasonEnd);
    this.risk = risk;
  }

  /**
   * A player's newest head in a size.
   *
   * @param below share of children of the age and sex with a smaller head when it was measured, 0
   *     to 1
   */
  public record Grown(
      UUID player,
      String number,
      String name,
      String team,
      String field,
      long version,
      LocalDate measuredOn,
      String size,
      double below,
      Outgrowth outgrowth) {

    /** Of 1000, so that a rare head is not called the smallest or the largest. */
    public long ofThousand() {
      return Math.round(below * 1000);
    }

    public long percent() {
      return Math.round(outgrowth.chance() * 100);
    }
  }

  /** The day on which the season that runs, or the next one, ends. */
  public LocalDate seasonEnd() {
    LocalDate today = LocalDate.now(clock);
    LocalDate thisYear = seasonEnd.atYear(today.getYear());
    return thisYear.isBefore(today) ? seasonEnd.atYear(today.getYear() + 1) : thisYear;
  }

  public List<Grown> all() {
    return grown(HEADS);
  }

  public Optional<Grown> one(UUID player) {
    return grown(HEADS + " where p.player = ?1", player).stream().findFirst();
  }

  private List<Grown> grown(String query, Object... with) {
    Map<String, SizeChart> byModel =
        charts.inForce().stream().collect(Collectors.toMap(SizeChart::model, chart -> chart));
    var prepared = entities.createNativeQuery(query, Tuple.class);
    for (int i = 0; i < with.length; i++) {
      prepared.setParameter(i + 1, with[i]);
    }
    List<Grown> grown = new ArrayList<>();
    for (Object row : prepared.getResultList()) {
      grown((Tuple) row, byModel).ifPresent(grown::add);
    }
    return grown;
  }

  /** Empty where there is no size that could be grown out of. */
  private Optional<Grown> grown(Tuple row, Map<String, SizeChart> charts) {
    Optional<Sex> sex = Sex.of(row.get("sex", String.class));
    LocalDate birth = row.get("birth", LocalDate.class);
    SizeChart chart = charts.get(row.get("model", String.class));
    String size = row.get("size", String.class);
    if (chart == null) {
      return Optional.empty();
    }
    LocalDate on = row.get("at", Instant.class).atZone(ZoneOffset.UTC).toLocalDate();
    Projection.Measured head =
        new Projection.Measured(
            new Millimetres(row.get("mm", Double.class)),
            Interval95.spread(row.get("pm", Double.class)),
            on);
    return upper(chart, size)
        .map(
            upper ->
                new Grown(
                    row.get("player", UUID.class),
                    row.get("number", String.class),
                    row.get("name", String.class),
                    row.get("team", String.class),
                    row.get("field", String.class),
                    row.get("version", Long.class),
                    on,
                    ModelName.said(chart.model()) + " " + SizeRange.said(size),
                    growth.below(sex, Age.years(birth, on), head.head()),
                    Outgrowth.of(growth, sex, birth, head, upper, seasonEnd(), risk)));
  }

  private static Optional<Millimetres> upper(SizeChart chart, String size) {
    List<SizeRange> sizes = chart.sizes();
    for (int i = 0; i < sizes.size(); i++) {
      if (sizes.get(i).size().equals(size)) {
        return Optional.of(chart.endOf(i));
      }
    }
    return Optional.empty();
  }
}
