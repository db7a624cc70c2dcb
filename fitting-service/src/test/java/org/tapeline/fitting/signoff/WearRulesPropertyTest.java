package org.tapeline.fitting.signoff;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.Tuple;
import net.jqwik.api.statistics.Statistics;
import org.tapeline.fitting.recheck.RecheckRules.Check;
import org.tapeline.fitting.recheck.Trigger;
import org.tapeline.fitting.signoff.WearRules.Helmet;
import org.tapeline.fitting.signoff.WearRules.Known;
import org.tapeline.fitting.signoff.WearRules.Picture;
import org.tapeline.fitting.signoff.WearRules.Word;

/** Whatever is known of a player. */
class WearRulesPropertyTest {
  private static final UUID PLAYER = UUID.randomUUID();
  private static final Instant NOW = Instant.parse("2026-09-12T15:00:00Z");
  private static final LocalDate TODAY = LocalDate.parse("2026-09-12");
  private static final Duration OLDEST = Duration.ofSeconds(10);

  /** All that the rules are asked with. */
  record Asked(Known known, Picture picture) {
    WearState answer() {
      return WearRules.state(known, picture, NOW, TODAY);
    }
  }

  @Property(tries = 5000, edgeCases = EdgeCasesMode.NONE)
  void onlyALiveSignOffWithNothingAgainstItMayBeWorn(@ForAll("asked") Asked asked) {
    boolean may = asked.answer().code().equals("may-wear");
    Statistics.label("may wear").collect(may);
    assertThat(may).isEqualTo(nothingAgainst(asked));
  }

  private static boolean nothingAgainst(Asked asked) {
    Known known = asked.known();
    boolean fresh =
        asked.picture().caughtUpAt().filter(at -> !at.plus(OLDEST).isBefore(NOW)).isPresent();
    return fresh
        && !known.outOfPlay()
        && known.word().filter(w -> w.state().equals("signed-off")).isPresent()
        && known.helmet().filter(h -> serves(h, known.word().orElseThrow())).isPresent()
        && !known.checks().isEmpty()
        && known.checks().stream().noneMatch(c -> c.due(NOW) || c.lapsed(NOW));
  }

  private static boolean serves(Helmet helmet, Word word) {
    boolean withThePlayer =
        helmet.state().equals("issued") && helmet.holder().equals(Optional.of(PLAYER))
            || helmet.state().equals("available")
                && helmet.returnedAt().filter(at -> !at.isBefore(word.at())).isEmpty();
    return helmet.readable()
        && withThePlayer
        && helmet.certifiedUntil().filter(TODAY::isAfter).isEmpty();
  }

  @Property(tries = 5000, edgeCases = EdgeCasesMode.NONE)
  void oneMoreBadFactNeverMakesItBetter(
      @ForAll("asked") Asked asked, @ForAll("badFact") UnaryOperator<Asked> worse) {
    int before = rank(asked.answer());
    int after = rank(worse.apply(asked).answer());
    Statistics.label("got worse").collect(after > before);
    assertThat(after).isGreaterThanOrEqualTo(before);
  }

  /** Not known and do not wear both keep a player off the field. */
  private static int rank(WearState state) {
    return switch (state.code()) {
      case "may-wear" -> 0;
      case "check-today" -> 1;
      default -> 2;
    };
  }

  @Provide
  Arbitrary<UnaryOperator<Asked>> badFact() {
    return Arbitraries.of(
        List.of(
            a -> with(a, new Known(a.known().word(), a.known().helmet(), true, a.known().checks())),
            a -> new Asked(a.known(), new Picture(Optional.empty(), OLDEST, "")),
            a -> withWord(a, Optional.empty()),
            a -> withWord(a, Optional.of(new Word(PLAYER, "withdrawn", "damage", NOW))),
            a -> withWord(a, Optional.of(new Word(PLAYER, "lapsed", "recheck-overdue", NOW))),
            a -> withHelmet(a, Optional.empty()),
            a -> withHelmet(a, a.known().helmet().map(h -> changed(h, "quarantined", true))),
            a -> withHelmet(a, a.known().helmet().map(h -> changed(h, h.state(), false))),
            a -> withCheck(a, check(Trigger.HAIR_CHANGED, -1, 2)),
            a -> withCheck(a, check(Trigger.COSMETIC_DAMAGE, -3, 0)),
            a -> withCheck(a, check(Trigger.NEAR_EDGE, 1, 7))));
  }

  private static Helmet changed(Helmet h, String state, boolean readable) {
    return new Helmet(
        state, h.holder(), h.certifiedUntil(), h.returnedAt(), readable && h.readable());
  }

  private static Asked with(Asked asked, Known known) {
    return new Asked(known, asked.picture());
  }

  private static Asked withWord(Asked a, Optional<Word> word) {
    Known k = a.known();
    return with(a, new Known(word, k.helmet(), k.outOfPlay(), k.checks()));
  }

  private static Asked withHelmet(Asked a, Optional<Helmet> helmet) {
    Known k = a.known();
    return with(a, new Known(k.word(), helmet, k.outOfPlay(), k.checks()));
  }

  /** Of a sign-off whose checks are known; one more of those that are not known helps nobody. */
  private static Asked withCheck(Asked a, Check check) {
    Known k = a.known();
    if (k.checks().isEmpty()) {
      return a;
    }
    List<Check> checks = new ArrayList<>(k.checks());
    checks.add(check);
    return with(a, new Known(k.word(), k.helmet(), k.outOfPlay(), checks));
  }

  private static Check check(Trigger trigger, int dueInDays, int lapsesInDays) {
    return new Check(
        trigger,
        NOW.plus(Duration.ofDays(dueInDays)),
        NOW.plus(Duration.ofDays(dueInDays)),
        Optional.of(NOW.plus(Duration.ofDays(lapsesInDays))),
        trigger.code());
  }

  @Provide
  Arbitrary<Asked> asked() {
    Arbitrary<Optional<Word>> words =
        mostly("signed-off", List.of("withdrawn", "lapsed", "a-state-of-next-year"))
            .map(state -> new Word(PLAYER, state, "", NOW.minus(Duration.ofDays(3))))
            .optional(0.95);
    Check ahead = check(Trigger.WEEKLY, 4, 7);
    Arbitrary<List<Check>> checks =
        mostly(
            List.of(ahead),
            List.of(
                List.of(),
                List.of(check(Trigger.WEEKLY, 0, 3)),
                List.of(ahead, check(Trigger.COLDER, -1, 30)),
                List.of(check(Trigger.WEEKLY, -3, 0), ahead)));
    Arbitrary<Picture> pictures =
        Arbitraries.of(0, 0, 0, 10, 11)
            .map(s -> new Picture(Optional.of(NOW.minusSeconds(s)), OLDEST, "3 PM"));
    return Combinators.combine(
            words,
            helmets(),
            Arbitraries.of(false, false, false, false, false, false, true),
            checks,
            pictures)
        .as((w, h, out, c, picture) -> new Asked(new Known(w, h, out, c), picture));
  }

  private static Arbitrary<Optional<Helmet>> helmets() {
    Arbitrary<Optional<LocalDate>> until =
        mostly(Optional.of(TODAY), List.of(Optional.empty(), Optional.of(TODAY.minusDays(1))));
    Arbitrary<Optional<Instant>> returned =
        mostly(
            Optional.empty(),
            List.of(
                Optional.of(NOW.minus(Duration.ofDays(9))),
                Optional.of(NOW.minus(Duration.ofDays(1)))));
    Arbitrary<Optional<UUID>> holders =
        mostly(Optional.of(PLAYER), List.of(Optional.of(UUID.randomUUID()), Optional.empty()));
    return Combinators.combine(
            mostly(
                "issued", List.of("available", "quarantined", "retired", "a-state-of-next-year")),
            holders,
            until,
            returned,
            Arbitraries.of(true, true, true, true, true, true, false))
        .as(Helmet::new)
        .optional(0.95);
  }

  private static <T> Arbitrary<T> mostly(T good, List<T> others) {
    return Arbitraries.frequencyOf(
        Tuple.of(9, Arbitraries.just(good)), Tuple.of(3, Arbitraries.of(others)));
  }
}
