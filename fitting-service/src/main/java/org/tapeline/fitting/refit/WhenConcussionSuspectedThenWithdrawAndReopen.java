package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.tapeline.fitting.concussion.ConcussionEvent.ConcussionSuspected;
import org.tapeline.fitting.concussion.SuspicionOutcome;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.session.Need;
import org.tapeline.fitting.signoff.SignOff;
import org.tapeline.fitting.signoff.SignOffCommand.Withdraw;
import org.tapeline.fitting.signoff.SignOffs;
import org.tapeline.journal.Cause;

/**
 * A suspected concussion ends the sign-off, whichever helmet it is on, and the player gets a re-fit
 * case: the helmet that was worn goes to inspection. Whether and when the player may return is not
 * for this service to say; a new fit does not.
 */
@ApplicationScoped
public class WhenConcussionSuspectedThenWithdrawAndReopen implements SuspicionOutcome {
  private static final String WHY = "suspected-concussion";

  private final SignOffs signOffs;
  private final RefitCases cases;

  WhenConcussionSuspectedThenWithdrawAndReopen(SignOffs signOffs, RefitCases cases) {
    this.signOffs = signOffs;
    this.cases = cases;
  }

  @Override
  public void suspected(ConcussionSuspected event, Cause cause) {
    Optional<SignOff.Live> ended =
        signOffs.handle(event.player(), new Withdraw(WHY, event.at()), cause);
    need(event, ended)
        .ifPresent(
            need ->
                cases.need(
                    event.player(), new RefitRules.Ask(WHY, event.tag(), List.of(need)), cause));
  }

  /** A helmet like the one that is gone; a player who had none needs none on this account. */
  private static Optional<Need> need(ConcussionSuspected event, Optional<SignOff.Live> ended) {
    return ended
        .map(live -> Need.helmet(live.model(), live.size()))
        .or(
            () ->
                event
                    .tag()
                    .flatMap(tag -> HelmetCopy.<HelmetCopy>findByIdOptional(tag))
                    .map(helmet -> Need.helmet(helmet.model, helmet.size)));
  }
}
