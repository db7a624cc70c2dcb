package org.tapeline.fitting.phone;

import java.util.Locale;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.Decision;
import org.tapeline.fitting.session.FitSession;
import org.tapeline.fitting.session.FitSessionDecider;
import org.tapeline.fitting.session.FitSessionEvolver;
import org.tapeline.fitting.session.Here;
import org.tapeline.fitting.session.Needs;
import org.tapeline.fitting.session.RemedyEngine;

/**
 * The fit check on a phone without signal, by the very rules of the service: it keeps nothing
 * itself, all goes in and out as JSON.
 */
final class FitCheckInHand {
  private final Protocol protocol;

  FitCheckInHand(String protocol) {
    this.protocol = ProtocolJson.read(protocol);
  }

  /** Decides: {@code accepted} with the events, or not with the code and the sentence. */
  String enter(String events, String command, String facts) {
    FitSession state = FitSessionEvolver.fold(EventsJson.read(events));
    Decision decision =
        FitSessionDecider.decide(
            state, CommandJson.read(state, JsonIn.read(command), JsonIn.read(facts)), protocol);
    return switch (decision) {
      case Decision.Accepted a ->
          JsonOut.object()
              .with("accepted", true)
              .with("events", a.events().stream().map(EventsOut::write).toList())
              .toString();
      case Decision.Refused r ->
          JsonOut.object()
              .with("accepted", false)
              .with("code", r.code())
              .with("field", r.field())
              .with("sentence", r.sentence())
              .toString();
    };
  }

  /** What there is to see of the session: where it stands, each check, and what to do next. */
  String look(String events, String known) {
    FitSession state = FitSessionEvolver.fold(EventsJson.read(events));
    JsonIn facts = JsonIn.read(known);
    Here here = HereJson.read(state, facts);
    return JsonOut.object()
        .with("status", state.status().name().toLowerCase(Locale.ROOT))
        .with("fitter", state.fitter())
        .with("sameProtocol", state.openedWith(protocol))
        .with("helmet", state.helmet().map(FitCheckInHand::helmet))
        .with("next", ProposalOut.write(RemedyEngine.next(state, protocol, here)))
        .with("failed", RemedyEngine.failed(state, protocol).map(Check::id))
        .with("checks", protocol.checks().stream().map(c -> look(state, c, here)).toList())
        .with("parts", state.parts())
        .with("needs", ProposalOut.needs(Needs.of(state, protocol, here)))
        .toString();
  }

  private static JsonOut helmet(FitSession.Helmet h) {
    return JsonOut.object().with("tag", h.tag()).with("model", h.model()).with("size", h.size());
  }

  private JsonOut look(FitSession state, Check check, Here here) {
    JsonOut out = JsonOut.object().with("id", check.id());
    if (state.passed(check.id())) {
      return out.with("answer", "pass");
    }
    if (!state.failed(check.id())) {
      return out;
    }
    String finding = state.finding(check.id());
    return out.with("answer", "fail")
        .with("finding", finding)
        .with("said", check.way(finding).map(Check.Way::said))
        .with(
            "remedies",
            RemedyEngine.remedies(state, check, protocol, here).stream()
                .map(ProposalOut::write)
                .toList())
        .with("mayPass", !check.standsUntilMended());
  }
}
