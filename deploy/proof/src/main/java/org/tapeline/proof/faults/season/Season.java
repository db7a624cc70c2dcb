package org.tapeline.proof.faults.season;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.IntStream;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.season.People.Player;

/**
 * A season in a few minutes: several drivers at once, each doing what people do in a mix that
 * follows from the seed. What comes of it does not: answers come when they come.
 */
public final class Season {
  public static final int DRIVERS = 4;

  private final Gate gate;
  private final People people;
  private final Fitting fitting;
  private final Families families;
  private final long seed;
  private final AtomicBoolean over = new AtomicBoolean();

  Season(Gate gate, People people, Fitting fitting, Families families, long seed) {
    this.gate = gate;
    this.people = people;
    this.fitting = fitting;
    this.families = families;
    this.seed = seed;
  }

  /** Begins; the threads end some time after {@link #end}, each with what it is at. */
  public List<Thread> begin() {
    return IntStream.range(0, DRIVERS)
        .mapToObj(i -> Thread.ofPlatform().name("driver-" + i).start(() -> drive(i)))
        .toList();
  }

  public void end() {
    over.set(true);
  }

  private void drive(int driver) {
    Random random = new Random(seed * DRIVERS + driver);
    while (!over.get()) {
      Player player = people.any(random, driver, DRIVERS);
      try {
        act(random.nextInt(100), player).once(gate, random);
      } catch (Gate.Away e) {
        StackPlace.rest(Duration.ofMillis(300));
      }
    }
  }

  /**
   * @param dice from 0 to 99
   */
  private Act act(int dice, Player player) {
    if (dice < 22) {
      return (g, r) -> fitting.online(player, g, r);
    } else if (dice < 36) {
      return (g, r) -> fitting.offline(player, g, r);
    } else if (dice < 48) {
      return (g, r) -> Roster.measure(player, g, r);
    } else if (dice < 58) {
      return Helmets::damage;
    } else if (dice < 64) {
      return Helmets::inspection;
    } else if (dice < 67) {
      return Helmets::hold;
    } else if (dice < 69) {
      return Helmets::lift;
    } else if (dice < 83) {
      return Depot::restock;
    } else if (dice < 86) {
      return (g, r) -> Depot.bring(player, g, r);
    } else if (dice < 93) {
      return families::reply;
    }
    return rarely(dice, player);
  }

  private Act rarely(int dice, Player player) {
    if (dice < 95) {
      return (g, r) -> Roster.move(people, player, g, r);
    } else if (dice < 97) {
      return (g, r) -> Roster.cutHair(player, g, r);
    } else if (dice < 98) {
      return (g, r) -> Roster.suspectConcussion(player, g, r);
    }
    return (g, r) -> Roster.clearReturn(player, g, r);
  }
}
