package org.tapeline.proof.faults.compare;

import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.season.Ledger;

/** Everything that is compared once it is quiet. */
public final class Comparison {
  private Comparison() {}

  /**
   * Empty when something happened meanwhile, so that the tables may be newer than the journals as
   * they were read.
   *
   * @throws SQLException when a database cannot be read
   */
  public static Optional<Findings> of(StackPlace place, Ledger ledger) throws SQLException {
    Evidence evidence = Evidence.of(place);
    Findings findings = new Findings();
    for (Check check : checks(ledger)) {
      check.look(evidence, findings);
    }
    return evidence.isNewest() ? Optional.of(findings) : Optional.empty();
  }

  private static List<Check> checks(Ledger ledger) {
    return List.of(
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
  }
}
