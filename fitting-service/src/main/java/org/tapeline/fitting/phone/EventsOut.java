package org.tapeline.fitting.phone;

import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.session.FitSessionEvent;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
import org.tapeline.fitting.session.FitSessionEvent.AdvisedSize;
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
import org.tapeline.fitting.session.Need;

/** Events in the form in which {@link EventsJson} reads them again. */
final class EventsOut {
  private EventsOut() {}

  static JsonOut write(FitSessionEvent event) {
    return switch (event) {
      case SessionOpened e -> typed("session-opened", opened(e));
      case HelmetTried e ->
          typed(
              "helmet-tried",
              start(e, e.player(), e.at())
                  .with("tag", e.tag())
                  .with("model", e.model())
                  .with("size", e.size()));
      case CheckRecorded e -> typed("check-recorded", recorded(e));
      case AdjustmentMade e -> typed("adjustment-made", adjusted(e));
      case RemedyPassedOver e ->
          typed(
              "remedy-passed-over",
              start(e, e.player(), e.at())
                  .with("check", e.check())
                  .with("remedy", e.remedy())
                  .with("item", e.item())
                  .with("why", e.why()));
      case EntryCorrected e ->
          typed(
              "entry-corrected",
              start(e, e.player(), e.at())
                  .with("check", e.check())
                  .with("remedy", e.remedy())
                  .with("why", e.why()));
      case SessionPaused e -> typed("session-paused", start(e, e.player(), e.at()));
      case SessionResumed e ->
          typed("session-resumed", start(e, e.player(), e.at()).with("fitter", e.fitter()));
      case PassTakenBack e ->
          typed(
              "pass-taken-back",
              start(e, e.player(), e.at()).with("tag", e.tag()).with("why", e.why()));
      case FitPassed e -> typed("fit-passed", passed(e));
      case FitFailed e -> typed("fit-failed", failed(e));
      case SessionAbandoned e ->
          typed("session-abandoned", start(e, e.player(), e.at()).with("why", e.why()));
    };
  }

  private static JsonOut typed(String type, JsonOut data) {
    return JsonOut.object().with("type", type).with("data", data);
  }

  private static JsonOut start(FitSessionEvent event, UUID player, Instant at) {
    return JsonOut.object().with("session", event.session()).with("player", player).with("at", at);
  }

  private static JsonOut opened(SessionOpened e) {
    return start(e, e.player(), e.at())
        .with("field", e.field())
        .with("team", e.team())
        .with("protocol", e.protocol())
        .with("protocolVersion", e.protocolVersion())
        .with("fitter", e.fitter())
        .with("advised", e.advised().stream().map(EventsOut::advised).toList());
  }

  private static JsonOut advised(AdvisedSize a) {
    return JsonOut.object().with("model", a.model()).with("size", a.size());
  }

  private static JsonOut recorded(CheckRecorded e) {
    return start(e, e.player(), e.at())
        .with("check", e.check())
        .with("result", e.result())
        .with("axis", e.axis())
        .with("finding", e.finding())
        .with("valueMm", e.valueMm());
  }

  private static JsonOut adjusted(AdjustmentMade e) {
    return start(e, e.player(), e.at())
        .with("check", e.check())
        .with("remedy", e.remedy())
        .with("item", e.item())
        .with("voids", e.voids());
  }

  private static JsonOut passed(FitPassed e) {
    JsonOut conditions =
        JsonOut.object()
            .with("airCelsius", e.conditions().airCelsius())
            .with("altitudeM", e.conditions().altitudeM())
            .with("hair", e.conditions().hair());
    List<JsonOut> checks =
        e.checks().stream()
            .map(
                c ->
                    JsonOut.object()
                        .with("check", c.check())
                        .with("result", c.result())
                        .with("at", c.at()))
            .toList();
    return start(e, e.player(), e.at())
        .with("field", e.field())
        .with("team", e.team())
        .with("tag", e.tag())
        .with("model", e.model())
        .with("size", e.size())
        .with("fitter", e.fitter())
        .with("protocol", e.protocol())
        .with("protocolVersion", e.protocolVersion())
        .with("parts", e.parts())
        .with("conditions", conditions)
        .with("checks", checks);
  }

  private static JsonOut failed(FitFailed e) {
    return start(e, e.player(), e.at())
        .with("field", e.field())
        .with("team", e.team())
        .with("tag", e.tag())
        .with("model", e.model())
        .with("size", e.size())
        .with("fitter", e.fitter())
        .with("failedChecks", e.failedChecks())
        .with("needs", e.needs().stream().map(EventsOut::need).toList());
  }

  static JsonOut need(Need n) {
    return JsonOut.object()
        .with("kind", n.kind())
        .with("model", n.model())
        .with("size", n.size())
        .with("item", n.item());
  }
}
