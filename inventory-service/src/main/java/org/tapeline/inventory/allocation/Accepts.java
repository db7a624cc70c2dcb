package org.tapeline.inventory.allocation;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.inventory.allocation.Seeker.Acceptable;
import org.tapeline.inventory.allocation.Seeker.Liking;

/** Which kinds of helmets a player may be given. */
final class Accepts {
  private Accepts() {}

  /** A kind that was advised; {@code second} for the other helmet to bring. */
  record Advised(Kind kind, boolean second) {}

  /**
   * Without a kind that is asked for, every model in its advised size, else its second. With one:
   * that kind; and when it is what the tape advises too, the second size, and other models if they
   * are allowed. Where a fit check taught that another size than the advised one is needed, the
   * advice for other sizes and models is in doubt as well, and nothing but that kind will do.
   */
  static List<Acceptable> of(Optional<Kind> asked, List<Advised> advice, boolean otherModels) {
    Map<Kind, Liking> accepts = new LinkedHashMap<>();
    asked.ifPresent(kind -> accepts.put(kind, Liking.ADVISED));
    boolean trusted = asked.isEmpty() || advice.contains(new Advised(asked.orElseThrow(), false));
    if (trusted) {
      advice.stream()
          .filter(a -> otherModels || asked.isEmpty() || sameModel(a, asked.get()))
          .forEach(a -> accepts.putIfAbsent(a.kind(), liking(a, asked)));
    }
    List<Acceptable> list = new ArrayList<>();
    accepts.forEach((kind, liking) -> list.add(new Acceptable(kind, liking)));
    return list;
  }

  private static boolean sameModel(Advised advised, Kind asked) {
    return advised.kind().model().equals(asked.model());
  }

  private static Liking liking(Advised advised, Optional<Kind> asked) {
    boolean asAsked = asked.map(kind -> sameModel(advised, kind)).orElse(true);
    if (asAsked) {
      return advised.second() ? Liking.SECOND_SIZE : Liking.ADVISED;
    }
    return advised.second() ? Liking.OTHER_MODEL_SECOND_SIZE : Liking.OTHER_MODEL;
  }
}
