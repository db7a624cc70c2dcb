package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Map;
import java.util.stream.Collectors;
import org.tapeline.sizing.roster.PlayerEvent.HeadMeasured;
import org.tapeline.sizing.roster.PlayerEvent.ModelAdvice;
import org.tapeline.sizing.roster.PlayerEvent.PlayerEnrolled;
import org.tapeline.sizing.roster.PlayerEvent.PlayerLeft;
import org.tapeline.sizing.roster.PlayerEvent.PlayerMoved;
import org.tapeline.sizing.roster.PlayerEvent.ReadingTaken;
import org.tapeline.sizing.roster.PlayerEvent.SizeAdvised;

/** The tables that pages read, as the players' events fill them. */
@ApplicationScoped
public class HeadTables {

  void show(PlayerEvent event, long version) {
    switch (event) {
      case PlayerEnrolled e -> {}
      case PlayerMoved e -> {}
      case PlayerLeft e -> {}
      case HeadMeasured e -> showHead(e, version);
      case SizeAdvised e -> showAdvice(e);
    }
  }

  private static void showHead(HeadMeasured e, long version) {
    HeadRow row = HeadRow.findById(new HeadRow.Key(e.player(), version));
    if (row == null) {
      row = new HeadRow();
      row.player = e.player();
      row.version = version;
    }
    row.valueMm = e.valueMm();
    row.uncertaintyMm = e.uncertaintyMm();
    row.apartMm = Math.abs(e.readings().get(0).mm() - e.readings().get(1).mm());
    row.readings =
        e.readings().stream().map(ReadingTaken::entered).collect(Collectors.joining(" · "));
    row.hair = e.hair().orElse("usual");
    row.measuredBy = e.by();
    row.measuredAt = e.at();
    row.persist();
  }

  private static void showAdvice(SizeAdvised e) {
    Map<String, AdviceRow> before =
        AdviceRow.of(e.player()).stream().collect(Collectors.toMap(row -> row.model, row -> row));
    for (ModelAdvice advice : e.advice()) {
      AdviceRow row = before.remove(advice.model());
      if (row == null) {
        row = new AdviceRow();
        row.player = e.player();
        row.model = advice.model();
      }
      row.chartVersion = advice.chartVersion();
      row.size = advice.size().orElse(null);
      row.second = advice.second().orElse(null);
      row.outcome = advice.outcome();
      row.reason = advice.reason();
      row.chances = AdviceRow.chances(advice.chances());
      row.persist();
    }
    before.values().forEach(AdviceRow::delete);
  }
}
