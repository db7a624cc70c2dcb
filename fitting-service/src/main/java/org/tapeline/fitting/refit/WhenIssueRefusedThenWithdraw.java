package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.session.Need;
import org.tapeline.fitting.signoff.SignOff;
import org.tapeline.fitting.signoff.SignOffCommand.WithdrawSession;
import org.tapeline.fitting.signoff.SignOffs;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/**
 * Inventory could not issue the helmet to the player whom a session signed off in it: the sign-off
 * of that very session ends, and the player gets a re-fit case. A later sign-off stands.
 */
@ApplicationScoped
public class WhenIssueRefusedThenWithdraw {
  private static final String WHY = "issue-refused";

  private final SignOffs signOffs;
  private final RefitCases cases;
  private final Clock clock;

  WhenIssueRefusedThenWithdraw(SignOffs signOffs, RefitCases cases, Clock clock) {
    this.signOffs = signOffs;
    this.cases = cases;
    this.clock = clock;
  }

  record IssueRefused(UUID player, UUID session) {}

  public void declareOn(Subscription subscription) {
    subscription.on("org.tapeline.inventory.issue-refused.v1", IssueRefused.class, this::refused);
  }

  private void refused(IssueRefused d, ReceivedEvent event) {
    PlayerCopy.locked(d.player());
    Cause cause = Cause.of(event, WHY);
    Optional<SignOff.Live> ended =
        signOffs.handle(d.player(), new WithdrawSession(d.session(), WHY, clock.instant()), cause);
    ended.ifPresent(
        live ->
            cases.need(
                d.player(),
                new RefitRules.Ask(
                    WHY, Optional.of(live.tag()), List.of(Need.helmet(live.model(), live.size()))),
                cause));
  }
}
