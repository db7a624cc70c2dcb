package org.tapeline.inventory.reconditioning;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;

/** What happens to helmets that are sent to the reconditioner together. */
public sealed interface BatchEvent {
  UUID batch();

  Instant at();

  /**
   * They went.
   *
   * @param reconditioner the association's code for it
   * @param backBy the day on which they are expected
   */
  record BatchSent(
      UUID batch,
      String place,
      String reconditioner,
      List<String> helmets,
      LocalDate backBy,
      Instant at)
      implements BatchEvent {
    public BatchSent {
      helmets = List.copyOf(helmets);
    }
  }

  /** Some of them, or all, came back or are known to be gone. */
  record BatchReceivedBack(UUID batch, String place, List<Result> helmets, Instant at)
      implements BatchEvent {
    public BatchReceivedBack {
      helmets = List.copyOf(helmets);
    }
  }

  /**
   * Nothing more is waited for.
   *
   * @param missing never came back, and are looked for
   * @param costCents of all that came back, in hundredths of the currency
   * @param currency ISO 4217
   */
  record BatchClosed(UUID batch, List<String> missing, long costCents, String currency, Instant at)
      implements BatchEvent {
    public BatchClosed {
      missing = List.copyOf(missing);
    }
  }

  /**
   * How one came back.
   *
   * @param outcome recertified, rejected, as-it-went or lost
   * @param costCents what the reconditioner asked for it
   */
  record Result(String tag, String outcome, long costCents, String currency) {}
}
