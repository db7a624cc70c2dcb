package org.tapeline.fitting.session;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.fitting.session.FitSession.AnsweredCheck;
import org.tapeline.fitting.session.FitSession.Applied;
import org.tapeline.fitting.session.FitSession.Helmet;
import org.tapeline.fitting.session.FitSession.PassedOver;
import org.tapeline.fitting.session.FitSession.Status;
import org.tapeline.fitting.session.FitSession.Work;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;
import org.tapeline.fitting.session.FitSessionEvent.EntryCorrected;
import org.tapeline.fitting.session.FitSessionEvent.FitFailed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.FitSessionEvent.HelmetTried;
import org.tapeline.fitting.session.FitSessionEvent.PassTakenBack;
import org.tapeline.fitting.session.FitSessionEvent.RemedyPassedOver;
import org.tapeline.fitting.session.FitSessionEvent.SessionAbandoned;
import org.tapeline.fitting.session.FitSessionEvent.SessionOpened;
import org.tapeline.fitting.session.FitSessionEvent.SessionPaused;
import org.tapeline.fitting.session.FitSessionEvent.SessionResumed;

/** How a session follows from its events. */
public final class FitSessionEvolver {
  private FitSessionEvolver() {}

  public static FitSession evolve(FitSession s, FitSessionEvent event) {
    return switch (event) {
      case SessionOpened e -> opened(e);
      case HelmetTried e -> onHead(s, e);
      case CheckRecorded e -> with(s, answered(s.now().orElseThrow(), e));
      case AdjustmentMade e -> with(s, adjusted(s.now().orElseThrow(), e));
      case RemedyPassedOver e -> with(s, passedOver(s.now().orElseThrow(), e));
      case EntryCorrected e -> with(s, corrected(s.now().orElseThrow(), e));
      case SessionPaused e -> standing(s, Status.PAUSED, s.fitter());
      case SessionResumed e -> standing(s, Status.OPEN, e.fitter());
      case FitPassed e -> standing(s, Status.PASSED, s.fitter());
      case PassTakenBack e -> standing(s, Status.ABANDONED, s.fitter());
      case FitFailed e -> standing(s, Status.FAILED, s.fitter());
      case SessionAbandoned e -> standing(s, Status.ABANDONED, s.fitter());
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
        e.at(),
        Optional.empty(),
        Map.of());
  }

  /**
   * A helmet put on is a new fit: no passed check counts any more. One that comes back keeps what
   * was found wrong with it, what was tried and the parts that are in it.
   */
  private static FitSession onHead(FitSession s, HelmetTried e) {
    Helmet helmet = new Helmet(e.tag(), e.model(), e.size());
    Work before = s.work().getOrDefault(e.tag(), Work.on(helmet));
    Map<String, AnsweredCheck> answers = new HashMap<>(before.answers());
    answers.values().removeIf(AnsweredCheck::passed);
    FitSession on = with(s, Optional.of(helmet), s.work());
    return with(on, new Work(helmet, answers, before.applied(), before.passedOver()));
  }

  private static Work answered(Work work, CheckRecorded e) {
    Map<String, AnsweredCheck> answers = new HashMap<>(work.answers());
    answers.put(e.check(), new AnsweredCheck(e.result().equals("pass"), e.finding(), e.at()));
    return new Work(work.helmet(), answers, work.applied(), work.passedOver());
  }

  private static Work adjusted(Work work, AdjustmentMade e) {
    Map<String, AnsweredCheck> answers = new HashMap<>(work.answers());
    answers.keySet().removeAll(e.voids());
    List<Applied> applied = new ArrayList<>(work.applied());
    applied.add(new Applied(e.check(), e.remedy(), e.item()));
    return new Work(work.helmet(), answers, applied, work.passedOver());
  }

  private static Work passedOver(Work work, RemedyPassedOver e) {
    List<PassedOver> all = new ArrayList<>(work.passedOver());
    all.add(new PassedOver(new Applied(e.check(), e.remedy(), e.item()), e.why()));
    return new Work(work.helmet(), work.answers(), work.applied(), all);
  }

  /** A remedy that was not applied voided its checks all the same: they are looked at again. */
  private static Work corrected(Work work, EntryCorrected e) {
    if (e.remedy().isEmpty()) {
      Map<String, AnsweredCheck> answers = new HashMap<>(work.answers());
      answers.remove(e.check());
      return new Work(work.helmet(), answers, work.applied(), work.passedOver());
    }
    List<Applied> applied = new ArrayList<>(work.applied());
    for (int i = applied.size() - 1; i >= 0; i--) {
      Applied at = applied.get(i);
      if (at.check().equals(e.check()) && at.remedy().equals(e.remedy().get())) {
        applied.remove(i);
        break;
      }
    }
    return new Work(work.helmet(), work.answers(), applied, work.passedOver());
  }

  private static FitSession with(FitSession s, Work now) {
    Map<String, Work> work = new HashMap<>(s.work());
    work.put(now.helmet().tag(), now);
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
        s.openedAt(),
        helmet,
        Map.copyOf(work));
  }

  private static FitSession standing(FitSession s, Status status, String fitter) {
    return new FitSession(
        status,
        s.session(),
        s.player(),
        s.field(),
        s.team(),
        fitter,
        s.protocol(),
        s.protocolVersion(),
        s.advised(),
        s.openedAt(),
        s.helmet(),
        s.work());
  }
}
