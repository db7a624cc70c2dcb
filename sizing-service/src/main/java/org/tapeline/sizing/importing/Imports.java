package org.tapeline.sizing.importing;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;
import org.tapeline.sizing.chart.ChartImport;
import org.tapeline.sizing.chart.Charts;
import org.tapeline.sizing.csv.ImportAnswer;
import org.tapeline.sizing.csv.ImportAnswer.Mode;
import org.tapeline.sizing.csv.ImportRefused;
import org.tapeline.sizing.draft.Drafts;
import org.tapeline.sizing.roster.Advising;
import org.tapeline.sizing.roster.RosterImport;

/** Runs an import as one command. */
@ApplicationScoped
public class Imports {
  private final CommandLog commands;
  private final RosterImport roster;
  private final Charts charts;
  private final Drafts drafts;
  private final Advising advising;

  Imports(
      CommandLog commands, RosterImport roster, Charts charts, Drafts drafts, Advising advising) {
    this.commands = commands;
    this.roster = roster;
    this.charts = charts;
    this.drafts = drafts;
    this.advising = advising;
  }

  /** What becomes of charts that are in order. */
  enum Then {
    PUBLISH,
    DRAFT;

    /**
     * @param draft {@code true} or, also when nothing is said, {@code false}
     * @throws Problem when it is neither, or when a draft of something else than charts is wanted
     */
    static Then of(String what, String draft) {
      boolean wanted = "true".equals(draft);
      if (!wanted && draft != null && !draft.equals("false")) {
        throw refused("Write draft=true or draft=false.");
      }
      if (wanted && !what.equals("charts")) {
        throw refused("Only charts can be imported as drafts: leave draft out.");
      }
      return wanted ? DRAFT : PUBLISH;
    }

    private static Problem refused(String sentence) {
      return Problem.badRequest("draft", sentence, new FieldError("draft", sentence));
    }
  }

  /**
   * Answers with every wrong value. What is kept for a repeated request names the rows and columns
   * only: values of a file of people would outlive the erasure of a person.
   *
   * @throws ImportRefused when all or none was wanted and some row is wrong
   */
  Answer run(String what, UUID id, Mode mode, Then then, String csv) {
    String text = csv == null ? "" : csv;
    AtomicReference<ImportAnswer> fresh = new AtomicReference<>();
    Answer kept =
        commands.once(
            id,
            "import-" + what + "/" + mode + (then == Then.DRAFT ? "/draft" : ""),
            text,
            () -> {
              fresh.set(importing(what, id, mode, then, text));
              return Answer.of(200, fresh.get().withoutValues());
            });
    return fresh.get() == null ? kept : Answer.of(200, fresh.get());
  }

  private ImportAnswer importing(String what, UUID id, Mode mode, Then then, String csv) {
    Cause cause = Cause.command(id);
    ImportAnswer answer =
        switch (what) {
          case "players" -> roster.run(csv, mode, cause);
          case "charts" -> importCharts(csv, mode, then, cause);
          default -> throw new IllegalArgumentException(what);
        };
    if (mode == Mode.ALL_OR_NONE && !answer.errors().isEmpty()) {
      throw new ImportRefused(answer.errors());
    }
    return answer;
  }

  private ImportAnswer importCharts(String csv, Mode mode, Then then, Cause cause) {
    if (then == Then.DRAFT) {
      return ChartImport.run(csv, mode, drafts::keep);
    }
    ImportAnswer answer =
        ChartImport.run(
            csv, mode, chart -> charts.publish(chart.model(), chart.unit(), chart.sizes(), cause));
    if (answer.accepted() > 0) {
      advising.adviseAll(cause);
    }
    return answer;
  }
}
