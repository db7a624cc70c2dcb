package org.tapeline.fitting.evidence;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.session.FitSessionEvent.Conditions;

/** Evidence of an invented sign-off. */
final class SomeEvidence {
  static final Instant AT = Instant.parse("2026-08-20T22:30:15.123456Z");
  static final UUID SESSION = UUID.fromString("0198c0de-0000-7000-8000-000000000001");
  static final UUID PLAYER = UUID.fromString("0198c0de-0000-7000-8000-000000000002");

  private SomeEvidence() {}

  static Evidence with(String tag, Optional<Double> browMm, Evidence.Step... steps) {
    return new Evidence(
        SESSION,
        PLAYER,
        "U10-HAWKS",
        "NORTH",
        tag,
        "model-a",
        "youth-medium",
        List.of("jaw-pad-15mm"),
        "fitter.north",
        "youth-football",
        1,
        new Conditions(Optional.of(24.0), Optional.of(300.0), Optional.of("usual")),
        List.of(
            new Evidence.Answer("labels", "pass", Optional.empty(), AT.minusSeconds(60)),
            new Evidence.Answer("brow-clearance", "pass", browMm, AT.minusSeconds(30))),
        List.of(steps),
        AT);
  }
}
