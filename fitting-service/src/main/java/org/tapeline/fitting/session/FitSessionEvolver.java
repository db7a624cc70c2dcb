package org.tapeline.fitting.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.session.FitSession.AnsweredCheck;
import org.tapeline.fitting.session.FitSession.Helmet;
import org.tapeline.fitting.session.FitSession.Status;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;
import org.tapeline.fitting.session.FitSessionEvent.FitFailed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.FitSessionEvent.HelmetTried;
import org.tapeline.fitting.session.FitSessionEvent.SessionAbandoned;
import org.tapeline.fitting.session.FitSessionEvent.SessionOpened;

/** How a session follows from its events. */
public final class FitSessionEvolver {
  private FitSessionEvolver() {}

  public static FitSession evolve(FitSession s, FitSessionEvent event) {
    return switch (event) {
      case SessionOpened e ->
          new FitSession(
              Status.OPEN,
              e.session(),
              e.player(),
              e.field(),
              e.team(),
              e.fitter(),
              e.advised(),
              Optional.empty(),
              Map.of(),
              Set.of(),
              List.of());
      // Another helmet is another fit: nothing that was checked on the one before counts.
      case HelmetTried e ->
          with(
              s,
              Optional.of(new Helmet(e.tag(), e.model(), e.size())),
              Map.of(),
              Set.of(),
              s.parts());
      case CheckRecorded e -> answered(s, e);
      case AdjustmentMade e -> adjusted(s, e);
      case FitPassed e -> ended(s, Status.PASSED);
      case FitFailed e -> ended(s, Status.FAILED);
      case SessionAbandoned e -> ended(s, Status.ABANDONED);
    };
  }

  private static FitSession answered(FitSession s, CheckRecorded e) {
    Map<String, AnsweredCheck> answers = new HashMap<>(s.answers());
    answers.put(e.check(), new AnsweredCheck(e.result().equals("pass"), e.finding(), e.at()));
    return with(s, s.helmet(), answers, s.tried(), s.parts());
  }

  private static FitSession adjusted(FitSession s, AdjustmentMade e) {
    Map<String, AnsweredCheck> answers = new HashMap<>(s.answers());
    answers.keySet().removeAll(e.voids());
    Set<String> tried = new HashSet<>(s.tried());
    tried.add(e.check() + "/" + e.remedy());
    List<String> parts = new ArrayList<>(s.parts());
    e.item().ifPresent(parts::add);
    return with(s, s.helmet(), answers, tried, parts);
  }

  private static FitSession with(
      FitSession s,
      Optional<Helmet> helmet,
      Map<String, AnsweredCheck> answers,
      Set<String> tried,
      List<String> parts) {
    return new FitSession(
        s.status(),
        s.session(),
        s.player(),
        s.field(),
        s.team(),
        s.fitter(),
        s.advised(),
        helmet,
        Map.copyOf(answers),
        Set.copyOf(tried),
        List.copyOf(parts));
  }

  private static FitSession ended(FitSession s, Status status) {
    return new FitSession(
        status,
        s.session(),
        s.player(),
        s.field(),
        s.team(),
        s.fitter(),
        s.advised(),
        s.helmet(),
        s.answers(),
        s.tried(),
        s.parts());
  }
}
