package org.tapeline.sizing.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.sizing.chart.ChartPublished.Size;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.csv.ImportAnswer.RowError;
import org.tapeline.sizing.offset.OffsetPosterior;
import org.tapeline.sizing.roster.MeasuredPlayer;

/**
 * What publishing a draft would change.
 *
 * @param version of the chart in force; 0 when the model has none
 * @param draft with the version, what publishing has to name
 * @param measured players whose head is known
 * @param affected how many of them would be advised otherwise
 * @param players the first 200 of those, by team and name
 */
public record DraftPreview(
    String model,
    int version,
    UUID draft,
    String unit,
    List<SizeLine> sizes,
    List<RowError> warnings,
    int measured,
    int affected,
    List<PlayerLine> players) {

  static final int MOST_PLAYERS = 200;

  /** A size in force beside the drafted one; {@code null} where there is none. */
  public record SizeLine(String size, Size now, Size then, String change) {
    static SizeLine of(SizeChange change) {
      return new SizeLine(
          change.size(),
          change.now().map(Size::of).orElse(null),
          change.then().map(Size::of).orElse(null),
          change.said());
    }
  }

  /**
   * A player who would be advised otherwise.
   *
   * @param now {@code null} when the model has no chart yet
   */
  public record PlayerLine(
      UUID player, String number, String name, String team, Advised now, Advised then) {}

  static DraftPreview of(
      ChartDraft draft,
      Optional<SizeChart> inForce,
      Map<String, OffsetPosterior> offsets,
      List<MeasuredPlayer> players) {
    int version = inForce.map(SizeChart::version).orElse(0);
    SizeChart drafted = new SizeChart(draft.model(), version + 1, draft.sizes());
    List<PlayerLine> affected = affected(inForce, drafted, offsets, players);
    return new DraftPreview(
        draft.model(),
        version,
        draft.draft(),
        draft.unit().code(),
        SizeChange.between(inForce.map(SizeChart::sizes).orElse(List.of()), drafted.sizes())
            .stream()
            .map(SizeLine::of)
            .toList(),
        draft.warnings(),
        players.size(),
        affected.size(),
        affected.stream().limit(MOST_PLAYERS).toList());
  }

  private static List<PlayerLine> affected(
      Optional<SizeChart> inForce,
      SizeChart drafted,
      Map<String, OffsetPosterior> offsets,
      List<MeasuredPlayer> players) {
    List<PlayerLine> affected = new ArrayList<>();
    for (MeasuredPlayer p : players) {
      Optional<Advised> now =
          inForce.map(c -> Advised.by(c, offsets, p.head(), p.uncertainty(), p.hair()));
      Advised then = Advised.by(drafted, offsets, p.head(), p.uncertainty(), p.hair());
      if (!now.equals(Optional.of(then))) {
        affected.add(
            new PlayerLine(p.player(), p.number(), p.name(), p.team(), now.orElse(null), then));
      }
    }
    return affected;
  }
}
