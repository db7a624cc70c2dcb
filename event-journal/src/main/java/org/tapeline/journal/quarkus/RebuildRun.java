package org.tapeline.journal.quarkus;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.StartupEvent;
import jakarta.annotation.Priority;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.enterprise.inject.Instance;
import java.util.List;
import org.tapeline.journal.rebuild.ReadModel;
import org.tapeline.journal.rebuild.Rebuild;
import org.tapeline.journal.rebuild.RebuildReport;
import org.tapeline.journal.rebuild.TableResult;

/**
 * A process that was started to rebuild does that, says what it found, and ends: with 0 when it is
 * done, with 1 when it only compared and something differs, with 2 when it could not be done.
 */
@ApplicationScoped
class RebuildRun {
  private static final int LAST = 10_000;

  private final JournalSettings settings;
  private final Rebuild rebuild;
  private final Instance<ReadModel> models;

  RebuildRun(JournalSettings settings, Rebuild rebuild, Instance<ReadModel> models) {
    this.settings = settings;
    this.rebuild = rebuild;
    this.models = models;
  }

  void start(@Observes @Priority(LAST) StartupEvent event, Serving serving) {
    serving
        .toRebuild()
        .ifPresentOrElse(
            names -> Thread.ofPlatform().name("rebuild").start(() -> Quarkus.asyncExit(run(names))),
            rebuild::tidy);
  }

  private int run(List<String> names) {
    RebuildReport report = new RebuildReport(settings.service, System.out);
    try {
      List<ReadModel> chosen = RebuildReport.chosen(models.stream().toList(), names);
      List<TableResult> results = rebuild.run(chosen, settings.compareOnly, report::progress);
      report.results(results, settings.compareOnly);
      boolean differs = results.stream().anyMatch(result -> result.differing() > 0);
      return settings.compareOnly && differs ? 1 : 0;
    } catch (RuntimeException e) {
      report.failed(e);
      return 2;
    }
  }
}
