package org.tapeline.fitting.session;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tapeline.fitting.helmet.HelmetInReach;
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
        AdvisedSizeCopy.newest(advice));
  }

  private static List<Here.FreeHelmet> helmets(FitSession session, LocalDate today) {
    return HelmetInReach.of(session.player(), session.field(), today).stream()
        .map(
            h ->
                new Here.FreeHelmet(
                    h.helmet().tag, h.helmet().model, h.helmet().size, h.reserved() || h.held()))
        .toList();
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
}
