package org.tapeline.fitting.session;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Protocol.Check;
import org.tapeline.fitting.session.FitSession.Helmet;

/** What a re-fit needs, from the checks that failed. */
final class Needs {
  private Needs() {}

  /**
   * One helmet at most, and each part once. A helmet that is itself at fault, or whose size is
   * already the last of its model, is replaced by another of the same size.
   *
   * @param sizes the sizes of the model, small to large
   */
  static List<Need> of(FitSession state, List<Check> failed, List<String> sizes) {
    Set<Need> parts = new LinkedHashSet<>();
    List<Need> helmets = new ArrayList<>();
    Optional<Helmet> now =
        state
            .helmet()
            .or(
                () ->
                    state.advised().stream()
                        .findFirst()
                        .map(a -> new Helmet("", a.model(), a.size())));
    for (Check check : failed) {
      switch (check.need()) {
        case JAW_PAD -> parts.add(Need.part("jaw-pad-20mm"));
        case CHIN_STRAP -> parts.add(Need.part("chin-strap-medium"));
        case HARDWARE_KIT -> parts.add(Need.part("hardware-kit"));
        case SMALLER_HELMET, LARGER_HELMET, OTHER_HELMET ->
            now.ifPresent(h -> helmets.add(helmet(h, step(state, check), sizes)));
      }
    }
    List<Need> needs = new ArrayList<>(helmets.stream().limit(1).toList());
    needs.addAll(parts);
    return needs;
  }

  /** A finding that says loose or tight knows better than the check's ordinary direction. */
  private static int step(FitSession state, Check check) {
    String finding = state.answers().get(check.id()).finding().orElse("");
    boolean changesSize = check.need() != Protocol.Need.OTHER_HELMET;
    if (changesSize && finding.equals("loose")) {
      return -1;
    }
    if (changesSize && finding.equals("tight")) {
      return 1;
    }
    return switch (check.need()) {
      case SMALLER_HELMET -> -1;
      case LARGER_HELMET -> 1;
      case OTHER_HELMET, JAW_PAD, CHIN_STRAP, HARDWARE_KIT -> 0;
    };
  }

  private static Need helmet(Helmet now, int step, List<String> sizes) {
    int index = sizes.indexOf(now.size());
    int wanted = index + step;
    boolean exists = index >= 0 && wanted >= 0 && wanted < sizes.size();
    return Need.helmet(now.model(), exists ? sizes.get(wanted) : now.size());
  }
}
