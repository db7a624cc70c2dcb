package org.tapeline.fitting.overview;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.refit.RefitView;
import org.tapeline.fitting.roster.AdvisedSizeCopy;
import org.tapeline.fitting.roster.Words;
import org.tapeline.fitting.signoff.WearState;

/**
 * A player with all that a fitter needs to know.
 *
 * @param tag the helmet of the sign-off that holds; empty for none
 * @param recheck what is to be looked at again, and what the weather does to the air
 * @param openSession a fit session that can be gone on with
 * @param asOf when this was asked: a page that stays open does not change by itself
 */
public record PlayerView(
    UUID player,
    String number,
    String name,
    String team,
    String field,
    WearState state,
    String tag,
    Recheck recheck,
    List<Advice> advice,
    Optional<RefitView> refit,
    Optional<UUID> openSession,
    Instant asOf) {

  /**
   * The re-checks of the sign-off that holds.
   *
   * @param ahead each with its day
   * @param hair at the fit; empty when it was not recorded
   * @param air what the air does to the liner, in numbers; empty without a sign-off
   * @param sealed the bound for a liner that cannot give; empty where something is not known
   */
  public record Recheck(List<String> ahead, String hair, String air, String sealed) {
    static final Recheck NONE = new Recheck(List.of(), "", "", "");
  }

  /** The size that sizing advises; empty for no size of that model. */
  public record Advice(
      String model, Optional<String> size, Optional<String> second, String reason) {
    static Advice of(AdvisedSizeCopy row) {
      return new Advice(
          row.model, Optional.ofNullable(row.size), Optional.ofNullable(row.second), row.reason);
    }

    public String said() {
      return Words.model(model) + ": " + size.map(Words::size).orElse("no size fits");
    }
  }

  /** The re-fit in few words. */
  public String refitSaid() {
    return refit
        .map(c -> c.booking().isPresent() ? c.bookedSaid() : "waits for a fit day")
        .orElse("");
  }
}
