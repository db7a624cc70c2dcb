package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.sizing.advice.ChartLookup;
import org.tapeline.sizing.advice.SizeAdvice;
import org.tapeline.sizing.chart.Charts;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.units.Millimetres;

/** Gives size advice by the charts in force. */
@ApplicationScoped
public class Advising {
  private final Players players;
  private final Charts charts;

  Advising(Players players, Charts charts) {
    this.players = players;
    this.charts = charts;
  }

  /** After a measurement. */
  void advise(UUID player, double valueMm, double uncertaintyMm, Cause cause) {
    advise(charts.inForce(), player, valueMm, uncertaintyMm, cause);
  }

  /** After charts were published; only where the advice changes does anything happen. */
  public void adviseAll(Cause cause) {
    List<SizeChart> inForce = charts.inForce();
    for (HeadRow head : HeadRow.newestOfAll()) {
      advise(inForce, head.player, head.valueMm, head.uncertaintyMm, cause);
    }
  }

  private void advise(
      List<SizeChart> inForce, UUID player, double valueMm, double uncertaintyMm, Cause cause) {
    List<SizeAdvice> advice =
        inForce.stream()
            .map(
                chart ->
                    ChartLookup.look(
                        chart, new Millimetres(valueMm), new Millimetres(uncertaintyMm)))
            .toList();
    players.handle(new PlayerCommand.Advise(player, advice), cause.step("advise"));
  }
}
