package org.tapeline.fitting.session;

import org.tapeline.fitting.session.FitSessionEvent.FitFailed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.FitSessionEvent.PassTakenBack;
import org.tapeline.journal.Cause;

/** Who must act when a session has a result. */
public interface SessionOutcome {
  void passed(FitPassed event, Cause cause);

  void failed(FitFailed event, Cause cause);

  void takenBack(PassTakenBack event, FitSession.Helmet helmet, Cause cause);
}
