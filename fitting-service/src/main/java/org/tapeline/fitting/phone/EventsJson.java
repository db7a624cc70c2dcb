package org.tapeline.fitting.phone;

import java.util.List;
import java.util.Optional;
import org.tapeline.fitting.session.FitSessionEvent;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
import org.tapeline.fitting.session.FitSessionEvent.AdvisedSize;
import org.tapeline.fitting.session.FitSessionEvent.CheckPassed;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;
import org.tapeline.fitting.session.FitSessionEvent.Conditions;
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
import org.tapeline.fitting.session.Need;

/**
 * The events of a session as the journal writes them, each with the short name of its type. What
 * was decided on this phone and what another phone sent before are read alike.
 */
final class EventsJson {
  private EventsJson() {}

  static List<FitSessionEvent> read(String text) {
    return JsonIn.readAll(text).stream()
        .map(e -> event(e.text("type"), e.opt("data").orElseThrow()))
        .toList();
  }

  private static FitSessionEvent event(String type, JsonIn e) {
    return switch (type) {
      case "session-opened" -> opened(e);
      case "helmet-tried" ->
          new HelmetTried(
              e.id("session"),
              e.id("player"),
              e.text("tag"),
              e.text("model"),
              e.text("size"),
              e.at("at"));
      case "check-recorded" ->
          new CheckRecorded(
              e.id("session"),
              e.id("player"),
              e.text("check"),
              e.text("result"),
              e.optText("axis"),
              e.optText("finding"),
              e.optNumber("valueMm"),
              e.at("at"));
      case "adjustment-made" ->
          new AdjustmentMade(
              e.id("session"),
              e.id("player"),
              e.text("check"),
              e.text("remedy"),
              e.optText("item"),
              e.texts("voids"),
              e.at("at"));
      case "remedy-passed-over" ->
          new RemedyPassedOver(
              e.id("session"),
              e.id("player"),
              e.text("check"),
              e.text("remedy"),
              e.optText("item"),
              e.text("why"),
              e.at("at"));
      case "entry-corrected" ->
          new EntryCorrected(
              e.id("session"),
              e.id("player"),
              e.text("check"),
              e.optText("remedy"),
              e.text("why"),
              e.at("at"));
      case "session-paused" -> new SessionPaused(e.id("session"), e.id("player"), e.at("at"));
      case "session-resumed" ->
          new SessionResumed(e.id("session"), e.id("player"), e.text("fitter"), e.at("at"));
      case "pass-taken-back" ->
          new PassTakenBack(
              e.id("session"), e.id("player"), e.text("tag"), e.text("why"), e.at("at"));
      case "fit-passed" -> passed(e);
      case "fit-failed" -> failed(e);
      case "session-abandoned" ->
          new SessionAbandoned(e.id("session"), e.id("player"), e.text("why"), e.at("at"));
      default -> throw new IllegalArgumentException("This phone does not know " + type);
    };
  }

  private static SessionOpened opened(JsonIn e) {
    return new SessionOpened(
        e.id("session"),
        e.id("player"),
        e.text("field"),
        e.text("team"),
        e.text("protocol"),
        e.whole("protocolVersion"),
        e.text("fitter"),
        advised(e.list("advised")),
        e.at("at"));
  }

  static List<AdvisedSize> advised(List<JsonIn> sizes) {
    return sizes.stream().map(a -> new AdvisedSize(a.text("model"), a.text("size"))).toList();
  }

  private static FitPassed passed(JsonIn e) {
    return new FitPassed(
        e.id("session"),
        e.id("player"),
        e.text("field"),
        e.text("team"),
        e.text("tag"),
        e.text("model"),
        e.text("size"),
        e.text("fitter"),
        e.text("protocol"),
        e.whole("protocolVersion"),
        e.texts("parts"),
        e.opt("conditions")
            .map(
                c ->
                    new Conditions(
                        c.optNumber("airCelsius"), c.optNumber("altitudeM"), c.optText("hair")))
            .orElse(new Conditions(Optional.empty(), Optional.empty(), Optional.empty())),
        e.list("checks").stream()
            .map(c -> new CheckPassed(c.text("check"), c.text("result"), c.at("at")))
            .toList(),
        e.at("at"));
  }

  private static FitFailed failed(JsonIn e) {
    return new FitFailed(
        e.id("session"),
        e.id("player"),
        e.text("field"),
        e.text("team"),
        e.optText("tag"),
        e.optText("model"),
        e.optText("size"),
        e.text("fitter"),
        e.texts("failedChecks"),
        e.list("needs").stream().map(EventsJson::need).toList(),
        e.at("at"));
  }

  static Need need(JsonIn n) {
    return new Need(n.text("kind"), n.optText("model"), n.optText("size"), n.optText("item"));
  }
}
