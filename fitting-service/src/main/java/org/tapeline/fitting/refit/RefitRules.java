package org.tapeline.fitting.refit;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import org.tapeline.fitting.session.Need;

/** When a case is opened anew, and from when on it can be booked. */
final class RefitRules {
  private RefitRules() {}

  /**
   * Why a player needs a new fit.
   *
   * @param why code of the reason
   * @param tag the helmet that must not be worn
   */
  record Ask(String why, Optional<String> tag, List<Need> needs) {
    boolean byFitter() {
      return why.equals("fit-failed");
    }
  }

  /**
   * Whether what is open already sees to it. What a fitter found at the head is the newer word and
   * replaces it. A helmet that is pulled adds nothing to a case that brings a helmet, and nothing
   * to one about another helmet: news of a former helmet may be late, and must not undo what was
   * found since.
   */
  static boolean covers(Ask open, Ask ask) {
    boolean same = new HashSet<>(open.needs()).equals(new HashSet<>(ask.needs()));
    boolean another = !open.tag().equals(ask.tag());
    boolean brings = open.needs().stream().anyMatch(Need::needsHelmet);
    return same || !ask.byFitter() && (another || brings);
  }

  /** When a need is there; empty while that is not known. */
  record Arrival(Optional<Instant> at) {}

  /** A slot that a case has. */
  record Slot(Instant startsAt, Instant endsAt) {}

  /**
   * The moment from which on a slot is to be looked for; empty when there is nothing to book: a
   * need is still unknown, or the case has a slot that is late enough and not over. A later arrival
   * moves the slot, an earlier one keeps it.
   */
  static Optional<Instant> bookFrom(List<Arrival> arrivals, Optional<Slot> has, Instant now) {
    if (arrivals.stream().anyMatch(a -> a.at().isEmpty())) {
      return Optional.empty();
    }
    Instant arrival =
        arrivals.stream().map(a -> a.at().orElseThrow()).max(Instant::compareTo).orElse(now);
    boolean suits =
        has.filter(s -> !s.startsAt().isBefore(arrival) && s.endsAt().isAfter(now)).isPresent();
    return suits ? Optional.empty() : Optional.of(arrival.isAfter(now) ? arrival : now);
  }
}
