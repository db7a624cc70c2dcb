package org.tapeline.sizing.draft;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
import jakarta.transaction.Transactional;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;
import org.tapeline.sizing.chart.Charts;
import org.tapeline.sizing.chart.ImportedChart;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.offset.OffsetPosterior;
import org.tapeline.sizing.offset.Offsets;
import org.tapeline.sizing.roster.Advising;
import org.tapeline.sizing.roster.MeasuredPlayer;

/** Charts on their way from a file to being in force: looked at, then published or thrown away. */
@ApplicationScoped
public class Drafts {
  private final CommandLog commands;
  private final Charts charts;
  private final Offsets offsets;
  private final Advising advising;

  Drafts(CommandLog commands, Charts charts, Offsets offsets, Advising advising) {
    this.commands = commands;
    this.charts = charts;
    this.offsets = offsets;
    this.advising = advising;
  }

  /**
   * What somebody had before the eyes when deciding to publish.
   *
   * @param version of the chart in force; 0 when there was none
   */
  public record Shown(Integer version, UUID draft) {}

  /** What is in force now. */
  public record Published(String model, int version) {}

  /**
   * Keeps the chart in place of an older draft of the model, in the caller's transaction.
   *
   * @return false when it is the chart in force: then no draft of the model is left
   */
  public boolean keep(ImportedChart chart) {
    SizeChart drafted = new SizeChart(chart.model(), 1, chart.sizes());
    if (charts.newest(chart.model()).filter(drafted::sameSizesAs).isPresent()) {
      ChartDraftRow.deleteById(chart.model());
      return false;
    }
    ChartDraftRow.replace(chart);
    return true;
  }

  /** By model; nothing is written. */
  @Transactional
  List<DraftPreview> previews() {
    List<ChartDraftRow> rows = ChartDraftRow.list("order by model");
    if (rows.isEmpty()) {
      return List.of();
    }
    Map<String, OffsetPosterior> learned = offsets.inForce();
    List<MeasuredPlayer> players = MeasuredPlayer.all();
    return rows.stream()
        .map(ChartDraftRow::asDraft)
        .map(draft -> DraftPreview.of(draft, charts.newest(draft.model()), learned, players))
        .toList();
  }

  /**
   * Puts the draft in force and advises anew whose advice changes by it.
   *
   * @throws Problem when there is no draft, or another one or another chart in force than was shown
   */
  Answer publish(UUID commandId, String model, Shown shown) {
    if (shown == null || shown.version() == null || shown.draft() == null) {
      throw Problem.badRequest(
          "preview-missing",
          "Say which preview you looked at: its version and its draft.",
          new FieldError("version", "Needed: the version in force, as the preview names it."),
          new FieldError("draft", "Needed: the draft's id, as the preview names it."));
    }
    return commands.once(
        commandId,
        "publish-chart-draft/" + model,
        shown,
        () -> Answer.of(200, doPublish(model, shown, Cause.command(commandId))));
  }

  private Published doPublish(String model, Shown shown, Cause cause) {
    ChartDraftRow row = locked(model);
    ChartDraft draft = row.asDraft();
    int version = version(model);
    if (version != shown.version()) {
      throw outdated("The chart in force has changed since the preview was shown.");
    }
    if (!draft.draft().equals(shown.draft())) {
      throw outdated("Another file was imported since the preview was shown.");
    }
    row.delete();
    if (charts.publish(model, draft.unit(), draft.sizes(), cause)) {
      advising.adviseAll(cause);
    }
    return new Published(model, version(model));
  }

  /**
   * @throws Problem when there is no draft of the model
   */
  Answer throwAway(UUID commandId, String model) {
    return commands.once(
        commandId,
        "throw-chart-draft-away/" + model,
        model,
        () -> {
          locked(model).delete();
          return new Answer(204, null);
        });
  }

  private static ChartDraftRow locked(String model) {
    return ChartDraftRow.<ChartDraftRow>findByIdOptional(model, LockModeType.PESSIMISTIC_WRITE)
        .orElseThrow(
            () ->
                Problem.notFound(
                    "There is no draft of " + model + ". It was published or thrown away."));
  }

  private int version(String model) {
    return charts.newest(model).map(SizeChart::version).orElse(0);
  }

  private static Problem outdated(String what) {
    return Problem.conflict("preview-outdated", what + " Look at the preview again.");
  }
}
