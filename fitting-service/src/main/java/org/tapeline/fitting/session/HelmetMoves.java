package org.tapeline.fitting.session;

import java.util.List;
import java.util.Optional;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Otherwise;
import org.tapeline.fitting.session.Here.FreeHelmet;

/** Which helmet is next: the first one, and the one after a helmet that cannot be made to fit. */
final class HelmetMoves {
  private HelmetMoves() {}

  /** The one kept for the player, else of an advised size. */
  static Proposal first(FitSession state, Here here) {
    Optional<Proposal> kept =
        here.helmets().stream()
            .filter(FreeHelmet::kept)
            .findFirst()
            .flatMap(h -> putOn(state, Need.helmet(h.model(), h.size()), here));
    if (kept.isPresent()) {
      return kept.get();
    }
    List<Need> advised =
        here.advised().stream().map(a -> Need.helmet(a.model(), a.size())).toList();
    return advised.stream()
        .flatMap(need -> putOn(state, need, here).stream())
        .findFirst()
        .orElseGet(
            () ->
                advised.isEmpty()
                    ? new Proposal.MeasureAgain(List.of())
                    : new Proposal.EndWithoutFit(List.of(advised.getFirst())));
  }

  /**
   * After a helmet with which nothing helps. A size that the measured head does not ask for, or one
   * that was on this head before, asks for the tape first: the reading may be wrong, or old.
   *
   * @param needs what a fail now would name; never empty
   */
  static Proposal after(FitSession state, Check check, List<Need> needs, Here here) {
    Need need = needs.getFirst();
    if (!need.needsHelmet()) {
      return new Proposal.EndWithoutFit(needs);
    }
    boolean fault =
        check.otherwise(state.finding(check.id())).helmet().filter(SAME::equals).isPresent();
    boolean askedFor = here.advises(need.model().get(), need.size().get());
    boolean measured = here.measuredAt().filter(at -> at.isAfter(state.openedAt())).isPresent();
    if (!fault && !measured && (!askedFor || Needs.tried(state, need))) {
      return new Proposal.MeasureAgain(needs);
    }
    return putOn(state, need, here)
        .filter(p -> fault || !Needs.tried(state, need))
        .orElseGet(() -> new Proposal.EndWithoutFit(needs));
  }

  private static final Otherwise.Helmet SAME = Otherwise.Helmet.SAME;

  private static Optional<Proposal> putOn(FitSession state, Need need, Here here) {
    List<String> tags =
        here.tagsOf(need.model().get(), need.size().get()).stream()
            .filter(tag -> !state.work().containsKey(tag))
            .toList();
    return tags.isEmpty()
        ? Optional.empty()
        : Optional.of(new Proposal.PutOn(need.model().get(), need.size().get(), tags));
  }
}
