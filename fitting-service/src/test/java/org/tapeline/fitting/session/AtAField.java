package org.tapeline.fitting.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.UUID;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.session.FitSessionCommand.KnownHelmet;
import org.tapeline.fitting.session.FitSessionEvent.AdvisedSize;
import org.tapeline.fitting.session.FitSessionEvent.Conditions;

/**
 * A field with helmets, parts and a fitter who does what is proposed: made up from a seed. Heads
 * are arbitrary: any check may fail in any way, again and again.
 */
final class AtAField {
  static final Instant OPENED = Instant.parse("2026-08-01T15:06:00Z");
  private static final Map<String, List<String>> SIZES =
      Map.of(
          "model-a", List.of("youth-small", "youth-medium", "youth-large"),
          "model-b", List.of("small", "medium"));
  private static final List<String> PARTS =
      List.of(
          "jaw-pad-10mm",
          "jaw-pad-15mm",
          "jaw-pad-20mm",
          "jaw-pad-25mm",
          "chin-strap-small",
          "chin-strap-medium",
          "chin-strap-large",
          "hardware-kit",
          "valve");

  private final Random random;
  private final Protocol protocol;

  /** Checks that this head has trouble with, in one way mostly; the others fail by chance. */
  private final Map<String, String> trouble = new HashMap<>();

  private final double troubled;
  private final double byChance;

  /** What really lies there; the records may say something else. */
  final Map<String, Integer> stock = new HashMap<>();

  private final Map<String, Integer> recorded = new HashMap<>();
  private final List<Here.FreeHelmet> helmets = new ArrayList<>();
  private List<AdvisedSize> advised;
  private Optional<Instant> measuredAt;

  AtAField(long seed, Protocol protocol) {
    this.random = new Random(seed);
    this.protocol = protocol;
    this.troubled = List.of(0.4, 0.7, 0.95, 1.0).get(random.nextInt(4));
    this.byChance = List.of(0.0, 0.01, 0.03, 0.2).get(random.nextInt(4));
    int several = random.nextInt(6);
    for (int i = 0; i < several; i++) {
      Check check = protocol.checks().get(random.nextInt(protocol.checks().size()));
      trouble.put(check.id(), anyWay(check));
    }
    boolean recordsRight = random.nextInt(4) > 0;
    for (String part : PARTS) {
      int pieces = random.nextInt(4);
      stock.put(part, pieces);
      recorded.put(part, recordsRight ? pieces : random.nextInt(3));
    }
    int free = random.nextInt(8);
    for (int i = 0; i < free; i++) {
      String model = random.nextInt(3) == 0 ? "model-b" : "model-a";
      List<String> sizes = SIZES.get(model);
      String size = sizes.get(random.nextInt(sizes.size()));
      helmets.add(new Here.FreeHelmet("LV" + i, model, size, i == 0 && random.nextInt(3) == 0));
    }
    advised = random.nextInt(12) == 0 ? List.of() : advice();
    measuredAt = advised.isEmpty() ? Optional.empty() : Optional.of(OPENED.minusSeconds(86_400));
  }

  private List<AdvisedSize> advice() {
    List<AdvisedSize> all = new ArrayList<>();
    SIZES.forEach(
        (model, sizes) -> {
          if (random.nextInt(4) > 0) {
            all.add(new AdvisedSize(model, sizes.get(random.nextInt(sizes.size()))));
          }
        });
    return all;
  }

  FitSessionCommand.Open open() {
    return new FitSessionCommand.Open(
        new UUID(1, 1), new UUID(2, 2), "NORTH", "T", "f", advised, OPENED);
  }

  Here here() {
    return new Here(recorded, helmets, SIZES, advised, measuredAt);
  }

  boolean recordsAreRight() {
    return stock.equals(recorded);
  }

  /** What the fitter does on a proposal; empty when the head is measured again instead. */
  Optional<FitSessionCommand> follow(Proposal proposal, FitSession state, Instant at) {
    return switch (proposal) {
      case Proposal.PutOn p -> Optional.of(putOn(p, at));
      case Proposal.Look p -> Optional.of(answer(p.check(), at));
      case Proposal.Try p -> Optional.of(attempt(p, state, at));
      case Proposal.MeasureAgain p -> measureOrEnd(p, at);
      case Proposal.EndWithoutFit p -> Optional.of(fail(p.needs(), at));
      case Proposal.SignOff p -> Optional.of(pass(state, at));
      case Proposal.Resume p -> Optional.of(new FitSessionCommand.Resume("f", at));
      case Proposal.Nothing p -> throw new IllegalStateException("The session is over");
    };
  }

  private FitSessionCommand putOn(Proposal.PutOn p, Instant at) {
    String tag = p.tags().get(random.nextInt(p.tags().size()));
    return new FitSessionCommand.TryHelmet(tag, known(tag), p.size(), at);
  }

  private Optional<KnownHelmet> known(String tag) {
    return helmets.stream()
        .filter(h -> h.tag().equals(tag))
        .findFirst()
        .map(h -> new KnownHelmet(tag, h.model(), h.size(), "NORTH", Optional.empty()));
  }

  private FitSessionCommand answer(String id, Instant at) {
    Check check = protocol.check(id).orElseThrow();
    String usual = trouble.get(id);
    boolean passes = random.nextDouble() >= (usual == null ? byChance : troubled);
    Optional<String> finding =
        passes
            ? Optional.empty()
            : Optional.of(usual == null || random.nextInt(5) == 0 ? anyWay(check) : usual);
    return new FitSessionCommand.RecordCheck(
        id, passes, Optional.empty(), finding, Optional.empty(), at);
  }

  private String anyWay(Check check) {
    return check.ways().get(random.nextInt(check.ways().size())).finding();
  }

  private FitSessionCommand attempt(Proposal.Try p, FitSession state, Instant at) {
    boolean there = p.item().map(item -> left(item, state) > 0).orElse(true);
    if (!there) {
      return new FitSessionCommand.PassOver(p.check(), p.remedy(), p.item(), "no-part", at);
    }
    return random.nextInt(10) == 0
        ? new FitSessionCommand.PassOver(p.check(), p.remedy(), p.item(), "not-possible", at)
        : new FitSessionCommand.Adjust(p.check(), p.remedy(), p.item(), at);
  }

  /** Parts that went into another helmet of the session are gone, too. */
  int left(String item, FitSession state) {
    long used =
        state.work().values().stream()
            .flatMap(work -> work.parts().stream())
            .filter(item::equals)
            .count();
    return stock.getOrDefault(item, 0) - (int) used;
  }

  private Optional<FitSessionCommand> measureOrEnd(Proposal.MeasureAgain p, Instant at) {
    if (random.nextBoolean() && measuredAt.filter(m -> m.isAfter(OPENED)).isEmpty()) {
      advised = advice();
      measuredAt = Optional.of(at);
      return Optional.empty();
    }
    return Optional.of(
        p.otherwise().isEmpty()
            ? new FitSessionCommand.Abandon("interrupted", at)
            : fail(p.otherwise(), at));
  }

  private FitSessionCommand fail(List<Need> needs, Instant at) {
    return new FitSessionCommand.Fail(needs, here(), at);
  }

  private FitSessionCommand pass(FitSession state, Instant at) {
    return new FitSessionCommand.Pass(
        known(state.helmet().orElseThrow().tag()),
        List.of(),
        new Conditions(Optional.empty(), Optional.empty(), Optional.empty()),
        Optional.empty(),
        at);
  }
}
