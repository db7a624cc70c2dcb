package org.tapeline.proof.faults.compare;

import java.util.HashSet;
import java.util.Set;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.season.Ledger;

/**
 * What guardians answered behind their links. The service gives such an answer an id of its own,
 * which follows from the one sent, so what came of it is counted.
 */
final class Replies implements Check {
  private static final String NAME = "replies";

  private final Ledger ledger;

  Replies(Ledger ledger) {
    this.ledger = ledger;
  }

  @Override
  public void look(Evidence evidence, Findings findings) {
    long chosen = accepted("slot chosen");
    long booked =
        evidence.of(Part.FITTING, "refit-booked").stream()
            .filter(event -> !event.text("chosenWith").isEmpty())
            .count();
    String what = chosen + " slots were chosen, " + booked + " booked for it";
    if (booked < chosen) {
      findings.lost(NAME, what);
    } else if (booked > chosen) {
      findings.doubled(NAME, what);
    }
    Set<String> confirmed = new HashSet<>();
    for (Event event : evidence.of(Part.NOTIFY, "notice-acknowledged")) {
      if (!confirmed.add(event.text("notice"))) {
        findings.doubled(NAME, event + ": the notice was confirmed before");
      }
    }
    long asked = accepted("notice confirmed");
    if (confirmed.isEmpty() && asked > 0) {
      findings.lost(NAME, asked + " confirmations came to nothing");
    }
    findings.looked("replies of guardians", chosen + asked);
  }

  private long accepted(String kind) {
    return ledger.accepted().filter(entry -> entry.command().kind().equals(kind)).count();
  }
}
