package org.tapeline.fitting.session;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.helmet.HelmetReservation;
import org.tapeline.fitting.part.PartsAt;
import org.tapeline.fitting.roster.AdvisedSizeCopy;
import org.tapeline.fitting.roster.ModelSize;
import org.tapeline.fitting.session.FitSessionEvent.AdvisedSize;

/** Looks up what is at the field for a player. */
final class HereAtField {
  private HereAtField() {}

  /**
   * @param today the day at the field
   */
  static Here of(FitSession session, LocalDate today) {
    List<AdvisedSizeCopy> advice = AdvisedSizeCopy.of(session.player());
    return new Here(
        session
            .helmet()
            .map(h -> PartsAt.place(session.field(), h.model()))
            .orElseGet(() -> PartsAt.place(session.field())),
        helmets(session, today),
        ModelSize.byModel(),
        advised(advice),
        measuredAt(advice));
  }

  private static List<Here.FreeHelmet> helmets(FitSession session, LocalDate today) {
    List<HelmetCopy> at = HelmetCopy.at(session.field());
    Map<String, List<UUID>> kept =
        HelmetReservation.playersOf(at.stream().map(h -> h.tag).toList());
    List<Here.FreeHelmet> free =
        at.stream()
            .filter(
                h ->
                    h.refusalFor(session.player(), today, kept.getOrDefault(h.tag, List.of()))
                        .isEmpty())
            .map(h -> free(h, session.player(), kept.getOrDefault(h.tag, List.of())))
            .toList();
    return Stream.concat(
            free.stream().filter(Here.FreeHelmet::kept), free.stream().filter(h -> !h.kept()))
        .toList();
  }

  private static Here.FreeHelmet free(HelmetCopy h, UUID player, List<UUID> keptFor) {
    boolean kept = keptFor.contains(player) || player.equals(h.holder);
    return new Here.FreeHelmet(h.tag, h.model, h.size, kept);
  }

  /** First choices, then the second size that a near edge brings. */
  static List<AdvisedSize> advised(List<AdvisedSizeCopy> advice) {
    return Stream.concat(
            advice.stream().filter(a -> a.size != null).map(a -> new AdvisedSize(a.model, a.size)),
            advice.stream()
                .filter(a -> a.second != null)
                .map(a -> new AdvisedSize(a.model, a.second)))
        .distinct()
        .collect(Collectors.toUnmodifiableList());
  }

  private static Optional<Instant> measuredAt(List<AdvisedSizeCopy> advice) {
    return advice.stream().map(a -> a.advisedAt).filter(Objects::nonNull).max(Instant::compareTo);
  }
}
