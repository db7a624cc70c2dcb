package org.tapeline.fitting.refit;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.UUID;
import org.tapeline.fitting.fitday.FitDays;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;

/**
 * A slot went by and the case is still open: nobody came, or the fit was not finished. It is booked
 * again on the next fit day. For comfort only: the player stays "do not wear" all the while.
 */
@ApplicationScoped
public class WhenSlotMissedThenBookAgain {
  private final RefitCases cases;
  private final FitDays fitDays;
  private final Clock clock;

  WhenSlotMissedThenBookAgain(RefitCases cases, FitDays fitDays, Clock clock) {
    this.cases = cases;
    this.fitDays = fitDays;
    this.clock = clock;
  }

  @Scheduled(
      every = "{tapeline.refit.look-for-missed}",
      delayed = "1m",
      concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  @Transactional
  void bookMissedAgain() {
    for (RefitCaseRow row : RefitCaseRow.allOpen()) {
      fitDays
          .bookingOf(row.refitCase)
          .filter(slot -> !slot.endsAt().isAfter(clock.instant()))
          .ifPresent(
              slot -> {
                UUID missed =
                    DerivedId.from(row.refitCase, "missed/" + slot.fitDay() + slot.startsAt());
                cases.bookIfReady(row.refitCase, new Cause(missed, missed, "missed"));
              });
    }
  }
}
