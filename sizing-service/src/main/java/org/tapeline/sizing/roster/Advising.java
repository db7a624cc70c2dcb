package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.tapeline.journal.Cause;
import org.tapeline.sizing.advice.Adviser;
import org.tapeline.sizing.advice.Hair;
import org.tapeline.sizing.advice.SizeAdvice;
import org.tapeline.sizing.chart.Charts;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.offset.OffsetPosterior;
import org.tapeline.sizing.offset.Offsets;
import org.tapeline.sizing.offset.Offsets.OffsetApplied;
import org.tapeline.sizing.reading.Measurement;
import org.tapeline.sizing.roster.PlayerCommand.Advise;
import org.tapeline.sizing.roster.PlayerEvent.ModelAdvice;
import org.tapeline.sizing.units.Millimetres;

/** Gives size advice by the charts in force. */
@ApplicationScoped
public class Advising {
  private static final int PLAYERS_IN_MEMORY = 100;

  private final Players players;
  private final Charts charts;
  private final Offsets offsets;

  Advising(Players players, Charts charts, Offsets offsets) {
    this.players = players;
    this.charts = charts;
    this.offsets = offsets;
  }

  /** After a measurement. */
  void advise(UUID player, Measurement head, Hair hair, Cause cause) {
    List<SizeAdvice> advice =
        Adviser.advise(charts.inForce(), offsets.inForce(), head.value(), head.uncertainty(), hair);
    players.handle(new Advise(player, advice), cause.step("advise"));
  }

  /** After a correction: by the head that is the newest now, or none. */
  void adviseAnew(UUID player, Cause cause) {
    HeadRow head = HeadRow.newestOf(List.of(player)).get(player);
    List<SizeAdvice> advice =
        head == null ? List.of() : adviceFor(head, charts.inForce(), offsets.inForce());
    players.handle(new Advise(player, advice), cause.step("advise"));
  }

  /**
   * After charts were published: those whose advice changes are advised anew, not those for whom
   * only the version of the chart is another one.
   */
  public void adviseAll(Cause cause) {
    List<SizeChart> inForce = charts.inForce();
    Map<String, OffsetPosterior> learned = offsets.inForce();
    Map<UUID, List<ModelAdvice>> before = adviceBefore();
    int changed = 0;
    for (HeadRow head : HeadRow.newestOfAll()) {
      List<SizeAdvice> advice = adviceFor(head, inForce, learned);
      if (!saySame(advice, before.getOrDefault(head.player, List.of()))) {
        players.handle(new Advise(head.player, advice), cause.step("advise"));
        if (++changed % PLAYERS_IN_MEMORY == 0) {
          AdviceRow.flush();
          AdviceRow.getEntityManager().clear();
        }
      }
    }
  }

  private static List<SizeAdvice> adviceFor(
      HeadRow head, List<SizeChart> inForce, Map<String, OffsetPosterior> learned) {
    return Adviser.advise(
        inForce,
        learned,
        new Millimetres(head.valueMm),
        new Millimetres(head.uncertaintyMm),
        Hair.of(head.hair).orElseThrow());
  }

  private static boolean saySame(List<SizeAdvice> advice, List<ModelAdvice> before) {
    return advice.size() == before.size()
        && IntStream.range(0, before.size())
            .allMatch(i -> ModelAdvice.of(advice.get(i)).saysSameAs(before.get(i)));
  }

  /** After fits have shown that a model's chart has to be read otherwise. */
  void adviseAll(@Observes OffsetApplied offset) {
    adviseAll(offset.cause());
  }

  private static Map<UUID, List<ModelAdvice>> adviceBefore() {
    return AdviceRow.<AdviceRow>list("order by model").stream()
        .collect(
            Collectors.groupingBy(
                row -> row.player, Collectors.mapping(AdviceRow::asAdvice, Collectors.toList())));
  }
}
