package org.tapeline.fitting.refit;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.session.Need;

/** What is to happen to a re-fit case. */
public sealed interface RefitCommand {

  /** A player needs a new fit, and with it at least one thing. */
  record Open(
      UUID refitCase,
      UUID player,
      String field,
      String team,
      String why,
      Optional<String> tag,
      List<Need> needs,
      Instant at)
      implements RefitCommand {}

  /**
   * A slot was found.
   *
   * @param chosenWith the notice by whose link a guardian chose it; empty when nobody did
   */
  record Book(
      UUID refitCase,
      UUID player,
      String field,
      UUID fitDay,
      Instant startsAt,
      Instant endsAt,
      String zone,
      boolean waitsForArrival,
      Optional<UUID> chosenWith,
      Instant at)
      implements RefitCommand {}

  /**
   * The slot is gone, and there is no other.
   *
   * @param why {@code moved} or {@code cancelled}, of the fit day
   */
  record Unbook(UUID refitCase, UUID player, UUID fitDay, String why, Instant at)
      implements RefitCommand {}

  /** It is over. */
  record Close(UUID refitCase, UUID player, Outcome outcome, Instant at) implements RefitCommand {}

  /** How a case ends. */
  enum Outcome {
    FITTED("fitted"),
    CANCELLED("cancelled");

    private final String code;

    Outcome(String code) {
      this.code = code;
    }

    String code() {
      return code;
    }
  }
}
