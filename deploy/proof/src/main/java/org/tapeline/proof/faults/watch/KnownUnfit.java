package org.tapeline.proof.faults.watch;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.proof.faults.season.Command;
import org.tapeline.proof.faults.season.Ledger;
import org.tapeline.proof.faults.season.Ledger.Entry;

/**
 * Which helmets and players are certainly unfit for the field by what was accepted. Where something
 * is under way that may have made them fit again, nothing is certain.
 */
final class KnownUnfit {
  private static final String HOLD = "hold";

  private final Map<String, Entry> players = new HashMap<>();
  private final Map<String, Entry> helmets = new HashMap<>();

  private KnownUnfit() {}

  /**
   * @param now the moment of the question
   * @param within after this long news of another service must be known or the picture be old
   */
  static KnownUnfit of(Ledger ledger, Instant now, Duration within) {
    KnownUnfit unfit = new KnownUnfit();
    // What is under way comes first: what ends in between is counted twice rather than not at all.
    List<Command> underWay = ledger.underWay();
    for (Entry entry : ledger.all()) {
      Command command = entry.command();
      if (!entry.accepted()) {
        continue;
      }
      switch (effect(command)) {
        case PLAYER_UNFIT -> unfit.players.put(command.about(), entry);
        case HELMETS_UNFIT ->
            List.of(command.about().split(" ")).forEach(tag -> unfit.helmets.put(tag, entry));
        case PLAYER_FIT, HELMET_FIT, HELD_FIT, NONE -> unfit.fit(command);
      }
    }
    unfit.helmets.values().removeIf(entry -> entry.at().plus(within).isAfter(now));
    underWay.forEach(unfit::fit);
    return unfit;
  }

  /**
   * What was known before and is known afterwards from the same command: a list that was made in
   * between must show it, however long it took.
   *
   * @param afterwards what is known once the answer is there
   */
  KnownUnfit still(KnownUnfit afterwards) {
    KnownUnfit unfit = new KnownUnfit();
    unfit.players.putAll(players);
    unfit.players.entrySet().retainAll(afterwards.players.entrySet());
    unfit.helmets.putAll(helmets);
    unfit.helmets.entrySet().retainAll(afterwards.helmets.entrySet());
    return unfit;
  }

  /**
   * What made somebody or something fit again, or may have; what makes unfit does not count here.
   */
  private void fit(Command command) {
    switch (effect(command)) {
      case PLAYER_FIT -> players.remove(command.about());
      case HELMET_FIT -> helmets.remove(command.about());
      // Of which helmets does not stand with the command: of all, as far as is known.
      case HELD_FIT -> helmets.values().removeIf(e -> e.command().kind().equals(HOLD));
      case PLAYER_UNFIT, HELMETS_UNFIT, NONE -> {}
    }
  }

  private enum Effect {
    PLAYER_UNFIT,
    PLAYER_FIT,
    HELMETS_UNFIT,
    HELMET_FIT,
    HELD_FIT,
    NONE
  }

  private static Effect effect(Command command) {
    if (command.address().endsWith("/fail")) {
      return Effect.PLAYER_UNFIT;
    }
    if (command.address().endsWith("/pass")) {
      return Effect.PLAYER_FIT;
    }
    return switch (command.kind()) {
      case "structural damage", HOLD -> Effect.HELMETS_UNFIT;
      case "inspection" -> Effect.HELMET_FIT;
      case "lift" -> Effect.HELD_FIT;
      default -> Effect.NONE;
    };
  }

  /** Why that player must not be shown as fit in that helmet; empty when nothing is known. */
  Optional<String> why(String player, String tag) {
    return Optional.ofNullable(players.get(player))
        .or(() -> Optional.ofNullable(helmets.get(tag)))
        .map(Entry::toString);
  }
}
