package org.tapeline.inventory.restock;

import java.time.Instant;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;

/**
 * A request to bring something to a place.
 *
 * @param fromPlace where a transfer comes from
 * @param item a part's code, or {@code helmet:<model>:<size>}
 * @param tag the very helmet, for a transfer of one
 * @param quantity pieces, 1 or more: one for each case, and those for the shelf
 * @param forStock of these for the shelf, 0 or more
 */
public record Restock(
    UUID request,
    Kind kind,
    String place,
    Optional<String> fromPlace,
    String item,
    Optional<String> model,
    Optional<String> size,
    Optional<String> tag,
    int quantity,
    int forStock,
    State state,
    Instant expectedAt) {

  /** From outside, or from one of our places. */
  public enum Kind {
    RESTOCK,
    TRANSFER;

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  /** How far it has come. */
  public enum State {
    REQUESTED,
    PICKED,
    SHIPPED,
    RECEIVED,
    CANCELLED;

    public String code() {
      return name().toLowerCase(Locale.ROOT);
    }

    /** From which states one gets to this. */
    Set<State> from() {
      return switch (this) {
        case REQUESTED -> EnumSet.noneOf(State.class);
        case PICKED -> EnumSet.of(REQUESTED);
        case SHIPPED -> EnumSet.of(REQUESTED, PICKED);
        case RECEIVED, CANCELLED -> EnumSet.of(REQUESTED, PICKED, SHIPPED);
      };
    }
  }

  public boolean allows(State next) {
    return next.from().contains(state);
  }

  public boolean ofHelmet() {
    return model.isPresent();
  }

  public boolean betweenPlaces() {
    return kind == Kind.TRANSFER;
  }

  Restock changed(int pieces, int onShelf, State next, Instant expected) {
    return new Restock(
        request, kind, place, fromPlace, item, model, size, tag, pieces, onShelf, next, expected);
  }

  /** One very piece on its way: it is well, damaged or lost. */
  public boolean onePiece() {
    return betweenPlaces() && quantity == 1;
  }

  public String says() {
    return state.code();
  }
}
