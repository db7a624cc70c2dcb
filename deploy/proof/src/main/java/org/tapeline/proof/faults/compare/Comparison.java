package org.tapeline.proof.faults.compare;

import java.sql.SQLException;
import java.util.List;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.season.Ledger;

/** Everything that is compared once it is quiet. */
public final class Comparison {
  private Comparison() {}

  /**
   * @throws SQLException when a database cannot be read
   */
  public static Findings of(StackPlace place, Ledger ledger) throws SQLException {
    Evidence evidence = Evidence.of(place);
    Findings findings = new Findings();
    List<Check> checks =
        List.of(
            new CommandsOnce(ledger),
            new Replies(ledger),
            new Reactions(),
            new Topics(),
            new Consumers(),
            new RosterCopies(),
            new HelmetCopies(),
            new SignOffs(),
            new RefitChains(),
            new Books(),
            new Notices(),
            new HashChains());
    for (Check check : checks) {
      check.look(evidence, findings);
    }
    return findings;
  }
}
