package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.tapeline.fitting.refit.RefitCommand.Outcome;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.session.FitSession;
import org.tapeline.fitting.session.FitSessionEvent.FitFailed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.FitSessionEvent.PassTakenBack;
import org.tapeline.fitting.session.Need;
import org.tapeline.fitting.session.SessionOutcome;
import org.tapeline.fitting.signoff.SignOffCommand.Withdraw;
import org.tapeline.fitting.signoff.SignOffCommand.WithdrawSession;
import org.tapeline.fitting.signoff.SignOffs;
import org.tapeline.journal.Cause;

/**
 * A pass signs the player off in that helmet and closes the re-fit case. A fail withdraws whatever
 * sign-off there was, on whichever helmet, and opens a case with what is needed. In the transaction
 * of the result: there is no moment at which a failed helmet counts as fitted.
 */
@ApplicationScoped
public class WhenSessionEndsThenSignOffOrReopen implements SessionOutcome {
  private final SignOffs signOffs;
  private final RefitCases cases;

  WhenSessionEndsThenSignOffOrReopen(SignOffs signOffs, RefitCases cases) {
    this.signOffs = signOffs;
    this.cases = cases;
  }

  @Override
  public void passed(FitPassed event, Cause cause) {
    PlayerCopy.locked(event.player());
    signOffs.signOff(event, cause);
    cases.close(event.player(), Outcome.FITTED, cause);
    OwedRefit.take(event.player());
  }

  @Override
  public void failed(FitFailed event, Cause cause) {
    PlayerCopy.locked(event.player());
    signOffs.handle(event.player(), new Withdraw("fit-failed", event.at()), cause);
    cases.need(event.player(), new RefitRules.Ask("fit-failed", event.tag(), event.needs()), cause);
  }

  /** Somebody may wear the helmet by a pass that never was: told as any other "do not wear". */
  @Override
  public void takenBack(PassTakenBack event, FitSession.Helmet helmet, Cause cause) {
    PlayerCopy.locked(event.player());
    String why = "pass-taken-back";
    signOffs
        .handle(event.player(), new WithdrawSession(event.session(), why, event.at()), cause)
        .ifPresent(
            ended ->
                cases.need(
                    event.player(),
                    new RefitRules.Ask(
                        why,
                        Optional.of(helmet.tag()),
                        List.of(Need.helmet(helmet.model(), helmet.size()))),
                    cause));
  }
}
