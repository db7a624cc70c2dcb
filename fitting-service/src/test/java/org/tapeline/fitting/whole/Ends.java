package org.tapeline.fitting.whole;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.session.FitSessionEvent.Conditions;
import org.tapeline.fitting.session.FitSessionEvent.FitFailed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.Need;
import org.tapeline.fitting.session.SessionOutcome;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Transactions;
import org.tapeline.journal.UuidV7;

/** Sessions that end: told to what follows from it, in a transaction as the session itself does. */
final class Ends {
  private static final Conditions CONDITIONS =
      new Conditions(Optional.empty(), Optional.empty(), Optional.empty());

  private final SessionOutcome outcome;
  private final Transactions transactions;

  Ends(SessionOutcome outcome, Transactions transactions) {
    this.outcome = outcome;
    this.transactions = transactions;
  }

  void passed(Person p, String tag, UUID session) {
    transactions.required(
        c -> {
          outcome.passed(
              new FitPassed(
                  session,
                  p.player(),
                  fieldOf(p),
                  p.team(),
                  tag,
                  "model-a",
                  sizeOf(tag),
                  "manager",
                  "youth-football",
                  1,
                  List.of(),
                  CONDITIONS,
                  List.of(),
                  Instant.now()),
              Cause.command(UuidV7.next()));
          return null;
        });
  }

  void failed(Person p, String tag, boolean part) {
    Need need = part ? Need.part("jaw-pad-15mm") : Need.helmet("model-a", "youth-small");
    transactions.required(
        c -> {
          outcome.failed(
              new FitFailed(
                  UuidV7.next(),
                  p.player(),
                  fieldOf(p),
                  p.team(),
                  Optional.of(tag),
                  Optional.of("model-a"),
                  Optional.of(sizeOf(tag)),
                  "manager",
                  List.of("snug"),
                  List.of(need),
                  Instant.now()),
              Cause.command(UuidV7.next()));
          return null;
        });
  }

  private static String sizeOf(String tag) {
    return HelmetCopy.<HelmetCopy>findById(tag).size;
  }

  private static String fieldOf(Person p) {
    return PlayerCopy.<PlayerCopy>findById(p.player()).field;
  }
}
