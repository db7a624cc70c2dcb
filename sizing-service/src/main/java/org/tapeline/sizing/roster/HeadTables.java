package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tapeline.sizing.roster.PlayerEvent.HeadCorrected;
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
      case HeadCorrected e -> showCorrection(e, version);
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
    fill(row, e.valueMm(), e.uncertaintyMm(), e.readings(), e.hair());
    row.measuredBy = e.by();
    row.measuredAt = e.at();
    row.persist();
  }

  private static void fill(
      HeadRow row,
      double valueMm,
      double uncertaintyMm,
      List<ReadingTaken> readings,
      Optional<String> hair) {
    row.valueMm = valueMm;
    row.uncertaintyMm = uncertaintyMm;
    row.apartMm = Math.abs(readings.get(0).mm() - readings.get(1).mm());
    row.readings = readings.stream().map(ReadingTaken::entered).collect(Collectors.joining(" · "));
    row.hair = hair.orElse("usual");
  }

  /** Only heads that count stand among the heads; what was held before stands beside. */
  private static void showCorrection(HeadCorrected e, long version) {
    HeadRow head = HeadRow.findById(new HeadRow.Key(e.player(), e.corrects()));
    CorrectionRow correction = CorrectionRow.of(head, version);
    correction.withdrawn = e.withdrawn();
    correction.why = e.why();
    correction.correctedBy = e.by();
    correction.correctedAt = e.at();
    correction.persist();
    if (e.withdrawn()) {
      head.delete();
    } else {
      fill(
          head,
          e.valueMm().orElseThrow(),
          e.uncertaintyMm().orElseThrow(),
          e.readings().orElseThrow(),
          e.hair());
    }
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
