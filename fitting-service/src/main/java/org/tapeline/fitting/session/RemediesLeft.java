package org.tapeline.fitting.session;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Remedy;
import org.tapeline.fitting.session.FitSession.Applied;
import org.tapeline.fitting.session.FitSession.Work;

/**
 * What can still be tried for a failed check on the helmet on the head: nothing that was tried or
 * passed over, nothing that the helmet does not allow, nothing that would undo what another check
 * asked for, and nothing once too often.
 */
final class RemediesLeft {
  private final Protocol protocol;
  private final Work work;
  private final Check check;

  private RemediesLeft(Protocol protocol, Work work, Check check) {
    this.protocol = protocol;
    this.work = work;
    this.check = check;
  }

  /** In the order of the protocol; nothing where no helmet is on. */
  static List<Applied> of(FitSession state, Check check, Protocol protocol) {
    return state
        .now()
        .map(work -> new RemediesLeft(protocol, work, check).list(state.finding(check.id())))
        .orElse(List.of());
  }

  /** What is wanted for it but is not here, in the order of the protocol. */
  static List<String> missing(FitSession state, Check check) {
    return state.now().map(Work::passedOver).orElse(List.of()).stream()
        .filter(p -> p.remedy().check().equals(check.id()) && p.why().equals(PassOverRules.NO_PART))
        .flatMap(p -> p.remedy().item().stream())
        .distinct()
        .toList();
  }

  private List<Applied> list(String finding) {
    List<Applied> left = new ArrayList<>();
    for (Remedy remedy : check.remedies(finding)) {
      if (protocol.possible(remedy, work.helmet().model()) && !contradicts(remedy)) {
        candidate(remedy).ifPresent(left::add);
      }
    }
    return left;
  }

  private Optional<Applied> candidate(Remedy remedy) {
    if (remedy.step().isPresent()) {
      return next(remedy).map(item -> named(remedy, Optional.of(item))).filter(this::untried);
    }
    boolean tried =
        work.applied().stream().anyMatch(a -> is(a, remedy))
            || work.passedOver().stream().anyMatch(p -> is(p.remedy(), remedy));
    return tried
        ? Optional.empty()
        : Optional.of(named(remedy, remedy.items().stream().findFirst()));
  }

  private Applied named(Remedy remedy, Optional<String> item) {
    return new Applied(check.id(), remedy.id(), item);
  }

  private boolean untried(Applied candidate) {
    return work.passedOver().stream().noneMatch(p -> p.remedy().equals(candidate));
  }

  private boolean is(Applied done, Remedy remedy) {
    return done.check().equals(check.id()) && done.remedy().equals(remedy.id());
  }

  /** The next part of the row that did not sit there yet: a step back would be a contradiction. */
  private Optional<String> next(Remedy remedy) {
    String slot = remedy.step().orElseThrow().slot();
    List<String> sat = new ArrayList<>();
    Optional.ofNullable(protocol.fittings(work.helmet().model()).fitted().get(slot))
        .or(() -> Optional.ofNullable(protocol.usual().fitted().get(slot)))
        .ifPresent(sat::add);
    work.applied().stream()
        .filter(a -> stepOf(a).filter(s -> s.slot().equals(slot)).isPresent())
        .forEach(a -> a.item().ifPresent(sat::add));
    Set<String> before = new HashSet<>(sat);
    int now = sat.isEmpty() ? -1 : remedy.items().indexOf(sat.getLast());
    int wanted = now + remedy.step().get().by();
    return now < 0 || wanted < 0 || wanted >= remedy.items().size()
        ? Optional.empty()
        : Optional.of(remedy.items().get(wanted)).filter(item -> !before.contains(item));
  }

  /**
   * More and less of one thing: too much by one check may be taken back by that same check, once.
   * When one check wants more and another less, no amount of it fits this head.
   */
  private boolean contradicts(Remedy remedy) {
    if (remedy.turn().isEmpty()) {
      return false;
    }
    Remedy.Turn turn = remedy.turn().get();
    List<Applied> turned =
        work.applied().stream()
            .filter(a -> turnOf(a).filter(t -> t.quantity().equals(turn.quantity())).isPresent())
            .toList();
    long same = turned.stream().filter(a -> turnOf(a).orElseThrow().by() == turn.by()).count();
    boolean againstAnother =
        turned.stream()
            .filter(a -> turnOf(a).orElseThrow().by() != turn.by())
            .anyMatch(a -> !a.check().equals(check.id()));
    boolean turnedBefore = same > 0 && same < turned.size();
    return same >= turn.most() || againstAnother || turnedBefore;
  }

  private Optional<Remedy.Turn> turnOf(Applied applied) {
    return remedyOf(applied).flatMap(Remedy::turn);
  }

  private Optional<Remedy.Step> stepOf(Applied applied) {
    return remedyOf(applied).flatMap(Remedy::step);
  }

  private Optional<Remedy> remedyOf(Applied applied) {
    return protocol.check(applied.check()).flatMap(c -> c.remedy(applied.remedy()));
  }
}
