package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.protocol.Remedy;
import org.tapeline.fitting.session.Decision.Accepted;
import org.tapeline.fitting.session.FitSessionEvent.AdjustmentMade;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;
import org.tapeline.fitting.session.FitSessionEvent.FitFailed;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.session.FitSessionEvent.HelmetTried;

/** Whoever does what is proposed, on whatever head and with whatever there is at the field. */
class RemedyEnginePropertyTest {
  private static final Protocol PROTOCOL = Protocols.builtIn();
  private static final int FAR_TOO_MANY = 3_000;

  private static final Map<String, Integer> ENDS = new HashMap<>();
  private static final Set<Integer> STATES = new HashSet<>();
  private static int longest;

  /** A session that was followed to its end. */
  private record Followed(
      AtAField field, List<FitSessionEvent> events, FitSession end, List<Proposal> proposals) {}

  private static Followed follow(long seed) {
    AtAField field = new AtAField(seed, PROTOCOL);
    List<FitSessionEvent> events = new ArrayList<>();
    List<Proposal> proposals = new ArrayList<>();
    FitSession state = after(FitSession.NONE, field.open(), events);
    Instant at = AtAField.OPENED;
    while (state.unfinished()) {
      assertThat(proposals.size())
          .as("seed %s goes round in circles", seed)
          .isLessThan(FAR_TOO_MANY);
      at = at.plusSeconds(5);
      Proposal proposal = RemedyEngine.next(state, PROTOCOL, field.here());
      proposals.add(proposal);
      mindStock(proposal, state, field);
      Optional<FitSessionCommand> command = field.follow(proposal, state, at);
      if (command.isPresent()) {
        state = after(state, command.get(), events);
        STATES.add(List.of(state.status(), state.helmet(), told(state)).hashCode());
      }
    }
    longest = Math.max(longest, proposals.size());
    return new Followed(field, events, state, proposals);
  }

  /** What counts on the helmet, without the moments. */
  private static Object told(FitSession state) {
    Map<String, String> answers = new HashMap<>();
    state
        .answers()
        .forEach(
            (check, a) -> answers.put(check, a.passed() ? "pass" : a.finding().orElse("fail")));
    return List.of(answers, state.now().map(FitSession.Work::applied).orElse(List.of()));
  }

  private static FitSession after(
      FitSession state, FitSessionCommand command, List<FitSessionEvent> events) {
    Decision decision = FitSessionDecider.decide(state, command, PROTOCOL);
    assertThat(decision)
        .as("what was proposed is accepted: %s", command)
        .isInstanceOf(Accepted.class);
    FitSession now = state;
    for (FitSessionEvent event : ((Accepted) decision).events()) {
      events.add(event);
      now = FitSessionEvolver.evolve(now, event);
    }
    return now;
  }

  /** Where the records are right, a part that is proposed without a doubt is really there. */
  private static void mindStock(Proposal proposal, FitSession state, AtAField field) {
    if (proposal instanceof Proposal.Try attempt
        && attempt.item().isPresent()
        && field.recordsAreRight()) {
      assertThat(field.left(attempt.item().get(), state) > 0).isEqualTo(attempt.onRecord());
    }
  }

  @Property(tries = 4_000)
  void comesToAPassOrToAFailWithNamedNeeds(@ForAll long seed) {
    Followed followed = follow(seed);
    FitSessionEvent last = followed.events().getLast();
    ENDS.merge(last.getClass().getSimpleName(), 1, Integer::sum);
    if (last instanceof FitFailed failed) {
      assertThat(failed.needs()).isNotEmpty();
    } else if (!(last instanceof FitPassed)) {
      // Nobody ever measured that head: no size can be named.
      assertThat(followed.proposals().getLast()).isEqualTo(new Proposal.MeasureAgain(List.of()));
    }
  }

  @Property(tries = 2_000)
  void passesOnlyWithEveryCheckPassedSinceTheLastChange(@ForAll long seed) {
    List<FitSessionEvent> events = follow(seed).events();
    Set<String> passed = new HashSet<>();
    for (FitSessionEvent event : events) {
      if (event instanceof HelmetTried) {
        passed.clear();
      } else if (event instanceof CheckRecorded answer) {
        if (answer.result().equals("pass")) {
          passed.add(answer.check());
        } else {
          passed.remove(answer.check());
        }
      } else if (event instanceof AdjustmentMade made) {
        passed.remove(made.check());
        passed.removeAll(remedy(made).voids());
      } else if (event instanceof FitPassed) {
        assertThat(passed).hasSameElementsAs(PROTOCOL.checks().stream().map(Check::id).toList());
      }
    }
  }

  @Property(tries = 2_000)
  void neverRepeatsAndNeverContradictsItself(@ForAll long seed) {
    Map<String, List<AdjustmentMade>> byHelmet = new HashMap<>();
    Set<String> kinds = new HashSet<>();
    String tag = "";
    for (FitSessionEvent event : follow(seed).events()) {
      if (event instanceof HelmetTried tried) {
        tag = tried.tag();
        assertThat(byHelmet).as("a helmet comes back").doesNotContainKey(tag);
        byHelmet.put(tag, new ArrayList<>());
        kinds.add(tried.model() + tried.size());
      } else if (event instanceof AdjustmentMade made) {
        byHelmet.get(tag).add(made);
      }
    }
    byHelmet.values().forEach(RemedyEnginePropertyTest::eachOnce);
    byHelmet.values().forEach(RemedyEnginePropertyTest::noPartTwiceInOnePlace);
    byHelmet.values().forEach(RemedyEnginePropertyTest::turnedOnceAtMost);
  }

  private static void eachOnce(List<AdjustmentMade> made) {
    assertThat(made.stream().map(m -> m.check() + m.remedy() + m.item()).toList())
        .doesNotHaveDuplicates();
  }

  private static void noPartTwiceInOnePlace(List<AdjustmentMade> made) {
    Map<String, List<String>> sat = new HashMap<>();
    for (AdjustmentMade m : made) {
      remedy(m)
          .step()
          .ifPresent(
              step ->
                  sat.computeIfAbsent(
                          step.slot(),
                          slot -> new ArrayList<>(List.of(PROTOCOL.usual().fitted().get(slot))))
                      .add(m.item().orElseThrow()));
    }
    sat.values().forEach(items -> assertThat(items).doesNotHaveDuplicates());
  }

  private static void turnedOnceAtMost(List<AdjustmentMade> made) {
    Map<String, List<AdjustmentMade>> turns = new HashMap<>();
    made.stream()
        .filter(m -> remedy(m).turn().isPresent())
        .forEach(
            m ->
                turns
                    .computeIfAbsent(remedy(m).turn().get().quantity(), q -> new ArrayList<>())
                    .add(m));
    for (List<AdjustmentMade> one : turns.values()) {
      int changes = 0;
      for (int i = 1; i < one.size(); i++) {
        boolean back =
            remedy(one.get(i)).turn().get().by() != remedy(one.get(i - 1)).turn().get().by();
        if (back) {
          changes++;
          assertThat(one.get(i).check()).isEqualTo(one.get(i - 1).check());
        }
      }
      assertThat(changes).isLessThanOrEqualTo(1);
    }
  }

  @Property(tries = 500)
  void saysTheSameOfTheSame(@ForAll long seed) {
    assertThat(follow(seed).proposals()).isEqualTo(follow(seed).proposals());
    Followed followed = follow(seed);
    assertThat(FitSessionEvolver.fold(followed.events())).isEqualTo(followed.end());
  }

  private static Remedy remedy(AdjustmentMade made) {
    return PROTOCOL.check(made.check()).orElseThrow().remedy(made.remedy()).orElseThrow();
  }

  @AfterContainer
  static void report() {
    System.out.println(
        "Followed to the end: "
            + ENDS
            + "; different states reached: "
            + STATES.size()
            + "; longest session: "
            + longest
            + " steps");
    assertThat(ENDS).containsKeys("FitPassed", "FitFailed");
  }
}
