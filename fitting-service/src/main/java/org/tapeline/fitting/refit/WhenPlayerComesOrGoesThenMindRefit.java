package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import org.tapeline.fitting.refit.RefitCommand.Outcome;
import org.tapeline.fitting.roster.RosterChange;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;

/**
 * A player who leaves needs no slot and no replacement: the case is closed, and what it was for is
 * kept, for the player may come back. One who comes gets what is owed. One who moves gets the
 * re-fit where the team now plays.
 */
@ApplicationScoped
public class WhenPlayerComesOrGoesThenMindRefit implements RosterChange {
  private final RefitCases cases;

  WhenPlayerComesOrGoesThenMindRefit(RefitCases cases) {
    this.cases = cases;
  }

  @Override
  public void enrolled(UUID player, ReceivedEvent event) {
    OwedRefit.take(player)
        .ifPresent(
            owed -> {
              UUID chain = owed.correlationId;
              cases.need(player, owed.ask(), new Cause(event.id(), chain, "enrolled"));
            });
  }

  @Override
  public void moved(UUID player, ReceivedEvent event) {
    cases.follow(player, Cause.of(event, "moved"));
  }

  @Override
  public void left(UUID player, ReceivedEvent event) {
    RefitCaseRow.openOf(player)
        .ifPresent(
            row -> {
              OwedRefit.keep(player, row.ask(), event.correlationId());
              cases.close(player, Outcome.CANCELLED, Cause.of(event, "left"));
            });
  }
}
