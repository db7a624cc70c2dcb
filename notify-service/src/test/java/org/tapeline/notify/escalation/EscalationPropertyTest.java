package org.tapeline.notify.escalation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.tapeline.notify.notice.EscalationStep;
import org.tapeline.notify.notice.Urgency;

@Label("An escalation, whatever happens to the notice and whenever somebody looks")
class EscalationPropertyTest {
  private static final EscalationPolicy POLICY = EscalationPolicyFile.read();
  private static final Instant RAISED = Instant.parse("2026-09-12T17:00:00Z");
  private static final Duration LONG = Duration.ofDays(4);

  /**
   * What happens to one notice: times are minutes after it was raised, or never.
   *
   * @param looks when somebody looks, in order; the last one is after everything
   */
  private record Life(
      Urgency urgency,
      Optional<Integer> sent,
      Optional<Integer> undeliverable,
      Optional<Integer> over,
      List<Integer> looks,
      Set<EscalationStep> possible) {

    static Life of(Random dice, boolean answered) {
      int days = (int) LONG.toMinutes();
      List<Integer> looks = new ArrayList<>(dice.ints(dice.nextInt(30), 0, days).boxed().toList());
      looks.add(days * 2);
      Set<EscalationStep> possible = EnumSet.noneOf(EscalationStep.class);
      for (EscalationStep step : EscalationStep.values()) {
        if (dice.nextBoolean()) {
          possible.add(step);
        }
      }
      return new Life(
          Urgency.values()[dice.nextInt(3)],
          maybe(dice, days),
          maybe(dice, days),
          answered ? Optional.of(dice.nextInt(days)) : Optional.empty(),
          looks.stream().sorted().toList(),
          possible);
    }

    private static Optional<Integer> maybe(Random dice, int days) {
      return dice.nextBoolean() ? Optional.of(dice.nextInt(days)) : Optional.empty();
    }

    Happened at(int minute, Set<EscalationStep> done) {
      return new Happened(
          urgency,
          RAISED,
          before(sent, minute),
          before(undeliverable, minute),
          over.filter(m -> m <= minute).isPresent(),
          done,
          possible);
    }

    private static Optional<Instant> before(Optional<Integer> event, int minute) {
      return event.filter(m -> m <= minute).map(m -> RAISED.plus(Duration.ofMinutes(m)));
    }
  }

  private record Taken(EscalationStep step, int minute) {}

  private static List<Taken> live(Life life) {
    List<Taken> taken = new ArrayList<>();
    Set<EscalationStep> done = EnumSet.noneOf(EscalationStep.class);
    for (int minute : life.looks()) {
      Instant now = RAISED.plus(Duration.ofMinutes(minute));
      Optional<Escalation.Due> next = next(life, minute, done);
      while (next.isPresent() && !next.get().at().isAfter(now)) {
        taken.add(new Taken(next.get().step(), minute));
        done.add(next.get().step());
        next = next(life, minute, done);
      }
    }
    return taken;
  }

  private static Optional<Escalation.Due> next(Life life, int minute, Set<EscalationStep> done) {
    return Escalation.next(life.at(minute, done), POLICY.of(life.urgency()));
  }

  @Property(tries = 2000)
  @Label("takes no step twice, and none before an earlier one")
  void onceAndInOrder(@ForAll @LongRange long seed) {
    Random dice = new Random(seed);
    List<EscalationStep> steps =
        live(Life.of(dice, dice.nextBoolean())).stream().map(Taken::step).toList();
    assertThat(steps).doesNotHaveDuplicates().isSorted();
  }

  @Property(tries = 2000)
  @Label("takes no step once nobody has to answer any more")
  void neverAfterTheEnd(@ForAll @LongRange long seed) {
    Life life = Life.of(new Random(seed), true);
    assertThat(live(life)).allSatisfy(t -> assertThat(t.minute()).isLessThan(life.over().get()));
  }

  @Property(tries = 2000)
  @Label("of a do-not-wear that nobody confirms ends at the equipment manager")
  void endsAtAPerson(@ForAll @LongRange long seed) {
    Life life = Life.of(new Random(seed), false);
    if (life.urgency() == Urgency.DO_NOT_WEAR) {
      assertThat(live(life).getLast().step()).isEqualTo(EscalationStep.MANAGER);
    }
  }

  @Property(tries = 2000)
  @Label("takes a second channel only for what one channel took")
  void secondAfterFirst(@ForAll @LongRange long seed) {
    Life life = Life.of(new Random(seed), false);
    assertThat(live(life))
        .filteredOn(t -> t.step() == EscalationStep.SECOND_CHANNEL)
        .allSatisfy(t -> assertThat(t.minute()).isGreaterThanOrEqualTo(life.sent().get()));
  }
}
