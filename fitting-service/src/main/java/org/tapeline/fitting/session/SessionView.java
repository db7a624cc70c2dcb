package org.tapeline.fitting.session;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;

/** A session for programs. */
public record SessionView(
    UUID session,
    UUID player,
    String status,
    String field,
    List<FitSessionEvent.AdvisedSize> advised,
    String tag,
    Map<String, String> answers,
    List<String> parts) {

  static SessionView of(FitSession s) {
    Map<String, String> answers = new TreeMap<>();
    s.answers().forEach((check, answer) -> answers.put(check, answer.passed() ? "pass" : "fail"));
    return new SessionView(
        s.session(),
        s.player(),
        s.status().name().toLowerCase(),
        s.field(),
        s.advised(),
        s.helmet().map(FitSession.Helmet::tag).orElse(null),
        answers,
        s.parts());
  }
}
