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
import org.tapeline.fitting.session.FitSession.Work;
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
      case SessionOpened e -> opened(e);
      case HelmetTried e -> onHead(s, e);
      case CheckRecorded e -> with(s, answered(s.now(), e));
      case AdjustmentMade e -> with(s, adjusted(s.now(), e));
      case FitPassed e -> ended(s, Status.PASSED);
      case FitFailed e -> ended(s, Status.FAILED);
      case SessionAbandoned e -> ended(s, Status.ABANDONED);
    };
  }

  public static FitSession fold(Iterable<? extends FitSessionEvent> events) {
    FitSession state = FitSession.NONE;
    for (FitSessionEvent event : events) {
      state = evolve(state, event);
    }
    return state;
  }

  private static FitSession opened(SessionOpened e) {
    return new FitSession(
        Status.OPEN,
        e.session(),
        e.player(),
        e.field(),
        e.team(),
        e.fitter(),
        e.protocol(),
        e.protocolVersion(),
        e.advised(),
        Optional.empty(),
        Map.of());
  }

  /**
   * A helmet put on is a new fit: no passed check counts any more. One that comes back keeps what
   * was found wrong with it, what was tried and the parts that are in it.
   */
  private static FitSession onHead(FitSession s, HelmetTried e) {
    Work before = s.work().getOrDefault(e.tag(), Work.NONE);
    Map<String, AnsweredCheck> answers = new HashMap<>(before.answers());
    answers.values().removeIf(AnsweredCheck::passed);
    FitSession on = with(s, Optional.of(new Helmet(e.tag(), e.model(), e.size())), s.work());
    return with(on, new Work(answers, before.tried(), before.parts()));
  }

  private static Work answered(Work work, CheckRecorded e) {
    Map<String, AnsweredCheck> answers = new HashMap<>(work.answers());
    answers.put(e.check(), new AnsweredCheck(e.result().equals("pass"), e.finding(), e.at()));
    return new Work(answers, work.tried(), work.parts());
  }

  private static Work adjusted(Work work, AdjustmentMade e) {
    Map<String, AnsweredCheck> answers = new HashMap<>(work.answers());
    answers.keySet().removeAll(e.voids());
    Set<String> tried = new HashSet<>(work.tried());
    tried.add(e.check() + "/" + e.remedy());
    List<String> parts = new ArrayList<>(work.parts());
    e.item().ifPresent(parts::add);
    return new Work(answers, tried, parts);
  }

  private static FitSession with(FitSession s, Work now) {
    Map<String, Work> work = new HashMap<>(s.work());
    work.put(s.helmet().orElseThrow().tag(), now);
    return with(s, s.helmet(), work);
  }

  private static FitSession with(FitSession s, Optional<Helmet> helmet, Map<String, Work> work) {
    return new FitSession(
        s.status(),
        s.session(),
        s.player(),
        s.field(),
        s.team(),
        s.fitter(),
        s.protocol(),
        s.protocolVersion(),
        s.advised(),
        helmet,
        Map.copyOf(work));
  }

  private static FitSession ended(FitSession s, Status status) {
    return new FitSession(
        status,
        s.session(),
        s.player(),
        s.field(),
        s.team(),
        s.fitter(),
        s.protocol(),
        s.protocolVersion(),
        s.advised(),
        s.helmet(),
        s.work());
  }
}
