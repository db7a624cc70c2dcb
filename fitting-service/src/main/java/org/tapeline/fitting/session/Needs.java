package org.tapeline.fitting.session;

import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Otherwise;
import org.tapeline.fitting.protocol.Otherwise.Helmet;

/** What a re-fit needs, from the checks that failed. */
public final class Needs {
  private Needs() {}

  /**
   * One helmet at most, and each part once. A part for a helmet that is not worn any more is not
   * needed: where a helmet is needed it is the only need.
   *
   * @param sizes the sizes of the model, small to large
   */
  public static List<Need> of(FitSession state, List<Check> failed, List<String> sizes) {
    Set<Need> parts = new LinkedHashSet<>();
    Set<Helmet> helmets = new LinkedHashSet<>();
    for (Check check : failed) {
      Otherwise otherwise = check.otherwise(state.finding(check.id()));
      otherwise.part().map(Need::part).ifPresent(parts::add);
      otherwise.helmet().ifPresent(helmets::add);
    }
    // A helmet that is at fault and does not fit either is not replaced by one of its size.
    return helmets.stream()
        .min(Comparator.comparing(which -> which == Helmet.SAME))
        .flatMap(which -> helmet(state, which, sizes))
        .map(List::of)
        .orElse(List.copyOf(parts));
  }

  private static Optional<Need> helmet(FitSession state, Helmet which, List<String> sizes) {
    Optional<FitSession.Helmet> on = state.helmet();
    if (on.isEmpty()) {
      return Optional.empty();
    }
    String model = on.get().model();
    int now = sizes.indexOf(on.get().size());
    Optional<Need> wanted =
        switch (which) {
          case SMALLER -> sized(model, now - 1, now, sizes);
          case LARGER -> sized(model, now + 1, now, sizes);
          case OTHER_MODEL -> Optional.empty();
          case SAME -> Optional.of(Need.helmet(model, on.get().size()));
        };
    return wanted
        .or(() -> advisedOfAnotherModel(state, model))
        .or(() -> Optional.of(Need.helmet(model, on.get().size())));
  }

  /** Where the model ends there is no such size, and nothing is guessed. */
  private static Optional<Need> sized(String model, int wanted, int now, List<String> sizes) {
    boolean exists = now >= 0 && wanted >= 0 && wanted < sizes.size();
    return exists ? Optional.of(Need.helmet(model, sizes.get(wanted))) : Optional.empty();
  }

  private static Optional<Need> advisedOfAnotherModel(FitSession state, String model) {
    return state.advised().stream()
        .filter(a -> !a.model().equals(model))
        .findFirst()
        .map(a -> Need.helmet(a.model(), a.size()));
  }
}
