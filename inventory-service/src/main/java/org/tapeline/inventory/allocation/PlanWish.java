package org.tapeline.inventory.allocation;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/**
 * What a plan is asked for.
 *
 * @param about the hold's id, the field's code, or empty for all
 * @param players the very players, for a plan that was not asked for by a person; empty otherwise
 * @param without places whose helmets stay where they are
 * @param bought helmets that are not there yet, to see what they would change
 * @param otherModels whether another model may be given than was asked for
 */
public record PlanWish(
    Sort sort,
    String about,
    List<UUID> players,
    List<String> without,
    List<Bought> bought,
    boolean otherModels) {

  /** For whom. */
  public enum Sort {
    /** The players whose helmets are on hold. */
    HOLD,
    /** All open re-fit cases that wait for a helmet. */
    CASES,
    /** Before the season: everybody on the roster without a helmet, and who waits for one. */
    SEASON,
    /** Nobody in particular: spares go from fields that have too many to fields without. */
    EVEN_OUT;

    public String code() {
      return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    static Optional<Sort> of(String code) {
      return Arrays.stream(values()).filter(sort -> sort.code().equals(code)).findFirst();
    }
  }

  /** So many more of a kind at a place, if they were bought. */
  public record Bought(String model, String size, String place, int pieces) {
    private static final int MOST = 9_999;

    public Bought {
      if (pieces < 1 || pieces > MOST) {
        throw new IllegalArgumentException("Write a whole number from 1 to " + MOST + ".");
      }
    }

    Kind kind() {
      return new Kind(model, size);
    }
  }

  boolean forPlayers() {
    return sort != Sort.EVEN_OUT;
  }

  /** As it is stored: the players stand in the lines. */
  PlanWish withoutPlayers() {
    return new PlanWish(sort, about, List.of(), without, bought, otherModels);
  }

  public PlanWish {
    players = List.copyOf(players);
    without = List.copyOf(without);
    bought = List.copyOf(bought);
  }
}
