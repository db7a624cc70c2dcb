package org.tapeline.fitting.session;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.roster.Words;

/** Which helmets of the field a fitter may reach for. */
final class HelmetChoice {
  private static final int MOST = 8;

  private HelmetChoice() {}

  /** Free for this player and of an advised size; the one kept for the player first. */
  static List<HelmetCopy> of(FitSession session) {
    return HelmetCopy.at(session.field()).stream()
        .filter(h -> h.refusalFor(session.player()).isEmpty())
        .filter(h -> session.player().equals(h.reservedFor) || isAdvised(session, h))
        .sorted(
            Comparator.comparing((HelmetCopy h) -> !session.player().equals(h.reservedFor))
                .thenComparing(h -> !session.player().equals(h.holder))
                .thenComparing(h -> h.tag))
        .limit(MOST)
        .toList();
  }

  private static boolean isAdvised(FitSession session, HelmetCopy helmet) {
    return session.advised().stream()
        .anyMatch(a -> a.model().equals(helmet.model) && a.size().equals(helmet.size));
  }

  static String advised(FitSession session) {
    return session.advised().stream()
        .map(a -> Words.model(a.model()) + " " + Words.size(a.size()))
        .collect(Collectors.joining(", "));
  }
}
