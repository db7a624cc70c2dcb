package org.tapeline.proof.faults.strike;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.Consumer;
import org.tapeline.proof.faults.process.FragileStack;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.season.Gate;

/** Strikes a stack at random moments, now and then twice at once, and counts. */
public final class Strikes {
  private static final int PAUSE_MILLIS = 4_000;
  private static final int TWICE_IN_100 = 25;

  private final FragileStack stack;
  private final Gate gate;
  private final List<Kind> kinds;
  private final Random random;
  private final Consumer<String> say;
  private final Map<String, Integer> counts = new TreeMap<>();

  /**
   * @param kinds those that may be chosen, at least one
   * @param say told of each strike
   */
  public Strikes(FragileStack stack, Gate gate, List<Kind> kinds, long seed, Consumer<String> say) {
    this.stack = stack;
    this.gate = gate;
    this.kinds = List.copyOf(kinds);
    this.random = new Random(seed);
    this.say = say;
  }

  /** One strike: its kind and the part that it hits, where a part is chosen beforehand. */
  private record Blow(Kind kind, Part part) {}

  /** Every part that can be killed is killed once, in any order. */
  public void eachOnce() {
    List<Blow> blows = new ArrayList<>();
    Part.SERVICES.forEach(service -> blows.add(new Blow(Kind.KILL_SERVICE, service)));
    blows.add(new Blow(Kind.KILL_BROKER, Part.BROKER));
    blows.add(new Blow(Kind.KILL_DATABASE, Part.DATABASE));
    Collections.shuffle(blows, random);
    for (int i = 0; i < blows.size(); i += 2) {
      together(blows.get(i), blows.get(i + 1));
    }
  }

  /** Goes on until that moment; the last strike may end a little later. */
  public void until(Instant end) {
    while (Instant.now().isBefore(end)) {
      StackPlace.rest(Duration.ofMillis(500 + random.nextInt(PAUSE_MILLIS)));
      Blow blow = any();
      if (random.nextInt(100) < TWICE_IN_100) {
        together(blow, any());
      } else {
        strike(blow, new Random(random.nextLong()));
      }
    }
  }

  private Blow any() {
    Kind kind = kinds.get(random.nextInt(kinds.size()));
    List<Part> parts =
        switch (kind) {
          case KILL_SERVICE, TWO_COPIES, KILL_RELAY, DELIVER_AGAIN -> Part.SERVICES;
          case KILL_BROKER -> List.of(Part.BROKER);
          case KILL_DATABASE -> List.of(Part.DATABASE);
          case PAUSE -> List.of(Part.values());
          case FULL_DISK -> List.of(Part.BROKER, Part.DATABASE);
        };
    return new Blow(kind, parts.get(random.nextInt(parts.size())));
  }

  private void together(Blow one, Blow other) {
    Random first = new Random(random.nextLong());
    Random second = new Random(random.nextLong());
    List<RuntimeException> failed = Collections.synchronizedList(new ArrayList<>());
    Thread beside = Thread.ofPlatform().start(() -> caught(other, second, failed));
    caught(one, first, failed);
    try {
      beside.join();
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException("Interrupted", e);
    }
    if (!failed.isEmpty()) {
      throw failed.getFirst();
    }
  }

  private void caught(Blow blow, Random dice, List<RuntimeException> failed) {
    try {
      strike(blow, dice);
    } catch (RuntimeException e) {
      failed.add(e);
    }
  }

  private void strike(Blow blow, Random dice) {
    Part part = blow.part();
    switch (blow.kind()) {
      case KILL_SERVICE, KILL_BROKER, KILL_DATABASE -> {
        note(blow.kind(), part.code());
        Kills.kill(stack, part, dice);
      }
      case KILL_RELAY -> note(blow.kind(), Kills.relay(stack, dice).code());
      case PAUSE -> {
        note(blow.kind(), part.code());
        Hangs.pause(stack, part, dice);
      }
      case FULL_DISK -> {
        note(blow.kind(), part.code());
        Hangs.fullDisk(stack, part, dice);
      }
      case TWO_COPIES -> {
        note(blow.kind(), part.code());
        SecondCopy.of(part, stack, gate, dice);
      }
      case DELIVER_AGAIN -> {
        int records = Redelivery.some(stack.place(), dice);
        note(blow.kind(), records + " records");
      }
    }
  }

  private synchronized void note(Kind kind, String target) {
    String counted = kind == Kind.DELIVER_AGAIN ? kind.code() : kind.code() + " " + target;
    counts.merge(counted, 1, Integer::sum);
    say.accept(kind.code() + " " + target);
  }

  /** Afterwards: how often each part was hit in each way. */
  public synchronized Map<String, Integer> counts() {
    return new TreeMap<>(counts);
  }
}
