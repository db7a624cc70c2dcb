package org.tapeline.proof.faults.watch;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.season.Gate;
import org.tapeline.proof.faults.season.Ledger;

/**
 * Looks at the sideline lists all the while, as coaches do: whatever is down, nobody may be shown
 * as fit to play who is known not to be.
 */
public final class SidelineWatch {
  /** How old a picture the list believes, with two seconds for the way there and back. */
  private static final Duration KNOWN_AFTER = Duration.ofSeconds(12);

  private static final Duration BETWEEN = Duration.ofMillis(700);
  private static final Set<String> PLAYS = Set.of("may-wear", "check-today");

  private final Gate gate;
  private final Ledger ledger;
  private final List<String> teams;
  private final List<String> wrong = new ArrayList<>();
  private long looked;
  private long unknown;
  private volatile boolean over;

  /**
   * @param teams whose lists are looked at in turn
   */
  public SidelineWatch(Gate gate, Ledger ledger, List<String> teams) {
    this.gate = gate;
    this.ledger = ledger;
    this.teams = List.copyOf(teams);
  }

  /** Looks until {@link #end}. */
  public Thread begin() {
    return Thread.ofPlatform().name("sideline").start(this::run);
  }

  public void end() {
    over = true;
  }

  private void run() {
    for (int i = 0; !over; i++) {
      look(teams.get(i % teams.size()));
      StackPlace.rest(BETWEEN);
    }
  }

  private void look(String team) {
    Instant asked = Instant.now();
    KnownUnfit before = KnownUnfit.of(ledger, asked, KNOWN_AFTER);
    try {
      JsonNode list = gate.look("manager", "/fitting/api/sideline?team=" + team);
      KnownUnfit unfit = before.still(KnownUnfit.of(ledger, asked, KNOWN_AFTER));
      boolean old = old(list.path("asOf").asText(""), asked);
      for (JsonNode line : list.path("players")) {
        judge(line, old, unfit, asked);
      }
    } catch (Gate.Away e) {
      // No answer is no "may wear" either.
      return;
    }
  }

  private static boolean old(String asOf, Instant asked) {
    return asOf.isEmpty() || Instant.parse(asOf).plus(KNOWN_AFTER).isBefore(asked);
  }

  private synchronized void judge(JsonNode line, boolean old, KnownUnfit unfit, Instant asked) {
    looked++;
    String state = line.path("state").path("code").asText();
    if (state.equals("unknown")) {
      unknown++;
    }
    if (!PLAYS.contains(state)) {
      return;
    }
    if (old) {
      wrong.add("shown as " + state + " on an old picture at " + asked + ": " + line);
    }
    unfit
        .why(line.path("number").asText(), line.path("tag").asText())
        .ifPresent(
            why ->
                wrong.add("shown as " + state + " at " + asked + " though " + why + ": " + line));
  }

  /** Lines that showed somebody as fit who is not. */
  public synchronized List<String> wrong() {
    return List.copyOf(wrong);
  }

  public synchronized long looked() {
    return looked;
  }

  /** Of these: not known. */
  public synchronized long unknown() {
    return unknown;
  }
}
