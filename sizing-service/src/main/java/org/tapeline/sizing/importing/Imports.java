package org.tapeline.sizing.importing;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import java.util.concurrent.atomic.AtomicReference;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.sizing.chart.ChartImport;
import org.tapeline.sizing.chart.Charts;
import org.tapeline.sizing.csv.ImportAnswer;
import org.tapeline.sizing.csv.ImportAnswer.Mode;
import org.tapeline.sizing.csv.ImportRefused;
import org.tapeline.sizing.roster.Advising;
import org.tapeline.sizing.roster.RosterImport;

/** Runs an import as one command. */
@ApplicationScoped
public class Imports {
  private final CommandLog commands;
  private final RosterImport roster;
  private final Charts charts;
  private final Advising advising;

  Imports(CommandLog commands, RosterImport roster, Charts charts, Advising advising) {
    this.commands = commands;
    this.roster = roster;
    this.charts = charts;
    this.advising = advising;
  }

  /**
   * Answers with every wrong value. What is kept for a repeated request names the rows and columns
   * only: values of a file of people would outlive the erasure of a person.
   *
   * @throws ImportRefused when all or none was wanted and some row is wrong
   */
  Answer run(String what, UUID id, Mode mode, String csv) {
    String text = csv == null ? "" : csv;
    AtomicReference<ImportAnswer> fresh = new AtomicReference<>();
    Answer kept =
        commands.once(
            id,
            "import-" + what + "/" + mode,
            text,
            () -> {
              fresh.set(importing(what, id, mode, text));
              return Answer.of(200, fresh.get().withoutValues());
            });
    return fresh.get() == null ? kept : Answer.of(200, fresh.get());
  }

  private ImportAnswer importing(String what, UUID id, Mode mode, String csv) {
    Cause cause = Cause.command(id);
    ImportAnswer answer =
        what.equals("players") ? roster.run(csv, mode, cause) : importCharts(csv, mode, cause);
    if (mode == Mode.ALL_OR_NONE && !answer.errors().isEmpty()) {
      throw new ImportRefused(answer.errors());
    }
    return answer;
  }

  private ImportAnswer importCharts(String csv, Mode mode, Cause cause) {
    ImportAnswer answer =
        ChartImport.run(
            csv, mode, chart -> charts.publish(chart.model(), chart.unit(), chart.sizes(), cause));
    if (answer.accepted() > 0) {
      advising.adviseAll(cause);
    }
    return answer;
  }
}
