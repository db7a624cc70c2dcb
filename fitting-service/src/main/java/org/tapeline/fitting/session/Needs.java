package org.tapeline.fitting.session;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Otherwise.Helmet;
import org.tapeline.fitting.protocol.Protocol;

/** What a re-fit needs, from the checks that failed. */
public final class Needs {
  private Needs() {}

  /**
   * One helmet at most, and each part once. A part for a helmet that is not worn any more is not
   * needed: where a helmet is needed it is the only need. A kind of helmet that was on this head
   * already is named only when there is no other.
   */
  public static List<Need> of(FitSession state, Protocol protocol, Here here) {
    Set<Need> parts = new LinkedHashSet<>();
    Set<Helmet> helmets = new LinkedHashSet<>();
    for (Check check : protocol.checks()) {
      if (state.failed(check.id())) {
        Optional<Need> part = part(state, check, protocol);
        part.ifPresent(parts::add);
        check
            .otherwise(state.finding(check.id()))
            .helmet()
            .filter(h -> part.isEmpty())
            .ifPresent(helmets::add);
      }
    }
    // A helmet that is at fault and does not fit either is not replaced by one of its size.
    return helmets.stream()
        .min(Comparator.comparing(which -> which == Helmet.SAME))
        .flatMap(which -> helmet(state, which, here))
        .map(List::of)
        .orElse(List.copyOf(parts));
  }

  /** The part that was looked for in vain, else the next one that could help, else the usual. */
  private static Optional<Need> part(FitSession state, Check check, Protocol protocol) {
    return RemediesLeft.missing(state, check).stream()
        .findFirst()
        .or(
            () ->
                RemediesLeft.of(state, check, protocol).stream()
                    .flatMap(a -> a.item().stream())
                    .findFirst())
        .or(() -> check.otherwise(state.finding(check.id())).part())
        .map(Need::part);
  }

  private static Optional<Need> helmet(FitSession state, Helmet which, Here here) {
    Optional<FitSession.Helmet> on = state.helmet();
    if (on.isEmpty()) {
      return Optional.empty();
    }
    String model = on.get().model();
    List<String> sizes = here.sizesOf(model);
    int now = sizes.indexOf(on.get().size());
    Need same = Need.helmet(model, on.get().size());
    Optional<Need> wanted =
        switch (which) {
          case SMALLER -> sized(model, now - 1, now, sizes);
          case LARGER -> sized(model, now + 1, now, sizes);
          case OTHER_MODEL -> Optional.empty();
          case SAME -> Optional.of(same);
        };
    return wanted
        .filter(need -> need.equals(same) || !tried(state, need))
        .or(() -> advisedOfAnotherModel(state, model, here))
        .or(() -> wanted)
        .or(() -> Optional.of(same));
  }

  /** Whether a helmet of that kind was on the head in this session. */
  static boolean tried(FitSession state, Need need) {
    return state.work().values().stream()
        .map(FitSession.Work::helmet)
        .anyMatch(h -> Need.helmet(h.model(), h.size()).equals(need));
  }

  /** Where the model ends there is no such size, and nothing is guessed. */
  private static Optional<Need> sized(String model, int wanted, int now, List<String> sizes) {
    boolean exists = now >= 0 && wanted >= 0 && wanted < sizes.size();
    return exists ? Optional.of(Need.helmet(model, sizes.get(wanted))) : Optional.empty();
  }

  private static Optional<Need> advisedOfAnotherModel(FitSession state, String model, Here here) {
    return here.advised().stream()
        .filter(a -> !a.model().equals(model))
        .map(a -> Need.helmet(a.model(), a.size()))
        .filter(need -> !tried(state, need))
        .findFirst();
  }
}
