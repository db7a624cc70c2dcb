package org.tapeline.inventory.reconditioning;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.tapeline.inventory.reconditioning.BatchEvent.Result;

/** What may be asked of a batch. */
public sealed interface BatchCommand {

  /** They are handed to whoever drives them there. */
  record Send(
      String place, String reconditioner, List<String> helmets, LocalDate backBy, Instant at)
      implements BatchCommand {}

  /** They are here again, or known to be gone. */
  record Receive(String place, List<Result> results, Instant at) implements BatchCommand {}

  /** What did not come is missing. */
  record Close(String currency, Instant at) implements BatchCommand {}
}
