package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.fitday.FitDays;

/** The re-fit cases that are open, to be shown. */
@ApplicationScoped
public class OpenRefits {
  private final FitDays fitDays;

  OpenRefits(FitDays fitDays) {
    this.fitDays = fitDays;
  }

  /** Oldest first. */
  public List<RefitView> all() {
    return RefitCaseRow.allOpen().stream().map(this::view).toList();
  }

  public Optional<RefitView> of(UUID player) {
    return RefitCaseRow.openOf(player).map(this::view);
  }

  /** The case with that id, as long as it is open. */
  public Optional<RefitView> byId(UUID refitCase) {
    return RefitCaseRow.<RefitCaseRow>findByIdOptional(refitCase)
        .filter(RefitCaseRow::open)
        .map(this::view);
  }

  private RefitView view(RefitCaseRow row) {
    return RefitView.of(row, fitDays.bookingOf(row.refitCase));
  }
}
