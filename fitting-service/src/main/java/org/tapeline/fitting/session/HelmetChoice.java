package org.tapeline.fitting.session;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.helmet.HelmetInReach;
import org.tapeline.fitting.roster.Words;

/**
 * A helmet of the field that a fitter may reach for.
 *
 * @param note why this one: kept for the player, or already the player's; empty for neither
 */
public record HelmetChoice(String tag, String model, String size, String note) {
  private static final int MOST = 8;

  /** Free for this player and of an advised size; the one kept for the player first. */
  static List<HelmetChoice> of(FitSession session, LocalDate today) {
    return HelmetInReach.of(session.player(), session.field(), today).stream()
        .map(h -> of(h, session))
        .flatMap(Optional::stream)
        .sorted(
            Comparator.comparing((HelmetChoice c) -> c.note().isEmpty())
                .thenComparing(HelmetChoice::tag))
        .limit(MOST)
        .toList();
  }

  private static Optional<HelmetChoice> of(HelmetInReach reach, FitSession session) {
    HelmetCopy helmet = reach.helmet();
    String note = "";
    if (reach.reserved()) {
      note = "kept for this player";
    } else if (reach.held()) {
      note = "this player has it";
    } else if (session.advised().stream()
        .noneMatch(a -> a.model().equals(helmet.model) && a.size().equals(helmet.size))) {
      return Optional.empty();
    }
    return Optional.of(
        new HelmetChoice(helmet.tag, Words.model(helmet.model), Words.size(helmet.size), note));
  }

  static String advised(FitSession session) {
    return session.advised().stream()
        .map(a -> Words.model(a.model()) + " " + Words.size(a.size()))
        .collect(Collectors.joining(", "));
  }
}
