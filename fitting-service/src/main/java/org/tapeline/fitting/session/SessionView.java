package org.tapeline.fitting.session;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/**
 * A session for programs.
 *
 * @param status open, paused, passed, failed or abandoned
 * @param fitter who has it in hand
 * @param tag the helmet on the head; {@code null} for none
 * @param answers the answers that count now, by check: pass or fail
 * @param parts the parts that the adjustments put into the helmet
 * @param next what is to be done next
 */
public record SessionView(
    UUID session,
    UUID player,
    String status,
    String field,
    String fitter,
    String protocol,
    int protocolVersion,
    List<FitSessionEvent.AdvisedSize> advised,
    String tag,
    Map<String, String> answers,
    List<String> parts,
    ProposalView next) {

  static SessionView of(FitSession s, Proposal next) {
    Map<String, String> answers = new TreeMap<>();
    s.answers().forEach((check, answer) -> answers.put(check, answer.passed() ? "pass" : "fail"));
    return new SessionView(
        s.session(),
        s.player(),
        s.status().name().toLowerCase(Locale.ROOT),
        s.field(),
        s.fitter(),
        s.protocol(),
        s.protocolVersion(),
        s.advised(),
        s.helmet().map(FitSession.Helmet::tag).orElse(null),
        answers,
        s.parts(),
        ProposalView.of(next));
  }
}
