package org.tapeline.fitting.session;

import java.util.Optional;
import org.tapeline.fitting.session.FitSessionCommand.KnownHelmet;
import org.tapeline.fitting.session.FitSessionCommand.TryHelmet;
import org.tapeline.fitting.session.FitSessionEvent.HelmetTried;

/** Whether a helmet may be on this head. */
final class HelmetRules {
  private HelmetRules() {}

  static Decision tryHelmet(FitSession state, TryHelmet attempt) {
    Optional<Decision> refused = unfit(state, attempt.tag(), attempt.helmet());
    if (refused.isPresent()) {
      return refused.get();
    }
    KnownHelmet helmet = attempt.helmet().orElseThrow();
    if (!helmet.size().equals(attempt.sizeLabel())) {
      return Decision.refused(
          "size-label",
          "sizeLabel",
          "The record says "
              + helmet.size().replace('-', ' ')
              + ". Read the label inside the shell again; when it really differs, put the helmet"
              + " aside and report it.");
    }
    return Decision.accepted(
        new HelmetTried(
            state.session(),
            state.player(),
            helmet.tag(),
            helmet.model(),
            helmet.size(),
            attempt.at()));
  }

  /** Why the helmet may not be on this head; empty when nothing stands against it. */
  static Optional<Decision> unfit(FitSession state, String tag, Optional<KnownHelmet> helmet) {
    if (helmet.isEmpty()) {
      return Optional.of(
          Decision.refused(
              "helmet-unknown",
              "tag",
              "No helmet with the tag " + tag + " is known here. Read the tag again."));
    }
    if (helmet.get().refusal().isPresent()) {
      return Optional.of(Decision.refused("helmet-not-free", "tag", helmet.get().refusal().get()));
    }
    if (!helmet.get().place().equals(state.field())) {
      return Optional.of(
          Decision.refused(
              "helmet-elsewhere",
              "tag",
              "By its record this helmet is at "
                  + helmet.get().place()
                  + ", not at "
                  + state.field()
                  + ". Take one of this field, or have it moved first."));
    }
    return Optional.empty();
  }

  static Decision none() {
    return Decision.refused("no-helmet", "Put a helmet on first: enter its tag.");
  }
}
