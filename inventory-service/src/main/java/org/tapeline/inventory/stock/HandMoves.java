package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Stream;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Moves parts by hand: between places, from and to the supplier, to scrap. */
@ApplicationScoped
public class HandMoves {
  static final String SUPPLIER = "supplier";
  static final String SCRAP = "scrap";

  /** More than this at once is a slip of the finger. */
  static final int MOST = 10_000;

  private static final String CODE = "[a-z0-9][a-z0-9-]{0,59}";

  private final StockDesk stock;
  private final Ledger ledger;
  private final StockPolicyFile policy;
  private final Places places;
  private final CommandLog commands;
  private final Caller caller;

  HandMoves(
      StockDesk stock,
      Ledger ledger,
      StockPolicyFile policy,
      Places places,
      CommandLog commands,
      Caller caller) {
    this.stock = stock;
    this.ledger = ledger;
    this.policy = policy;
    this.places = places;
    this.commands = commands;
    this.caller = caller;
  }

  /**
   * What is moved.
   *
   * @param from a place's code, or {@code supplier}
   * @param to a place's code, or {@code supplier} or {@code scrap}
   * @param model the helmet model that it is kept for; empty for any
   * @param quantity pieces, 1 or more
   * @param reason a code of the policy
   */
  public record Asked(
      String from, String to, String item, String model, int quantity, String reason) {
    public Asked {
      from = text(from);
      to = text(to);
      item = text(item);
      model = text(model);
      reason = text(reason);
    }

    private static String text(String said) {
      return said == null ? "" : said.strip();
    }
  }

  /** The move with what each place has now, of that part and for that model. */
  public record Moved(UUID move, int leftAtFrom, int nowAtTo) {}

  /**
   * @throws Problem with what is wrong, by field
   */
  public Answer move(Asked asked, UUID id) {
    check(asked);
    return commands.once(
        id, "move-parts", asked, () -> book(asked, Cause.command(id).step("move")));
  }

  private Answer book(Asked asked, Cause cause) {
    List<String> ends =
        Stream.of(asked.from(), asked.to()).filter(places::exists).sorted().toList();
    ends.forEach(place -> ledger.lock(place, asked.item()));
    Move move =
        new Move(
            account(asked.from()),
            account(asked.to()),
            asked.item(),
            asked.model(),
            asked.quantity());
    UUID booked = stock.move(move, asked.reason(), caller.id(), cause);
    ends.forEach(place -> stock.changed(place, asked.item(), cause));
    return Answer.of(200, new Moved(booked, left(asked.from(), asked), left(asked.to(), asked)));
  }

  private int left(String place, Asked asked) {
    return places.exists(place) ? ledger.pieces(place, asked.item(), asked.model()) : 0;
  }

  private String account(String end) {
    return places.exists(end) ? Move.place(end) : Move.outside(end);
  }

  private void check(Asked asked) {
    List<FieldError> errors = new ArrayList<>(wrongEnds(asked));
    if (!asked.item().matches(CODE) || !asked.model().matches("|" + CODE)) {
      errors.add(new FieldError("part", "Choose a part of the list."));
    }
    if (asked.quantity() < 1 || asked.quantity() > MOST) {
      errors.add(new FieldError("quantity", "Write a whole number from 1 to " + MOST + "."));
    }
    if (!policy.inForce().explainsMove(asked.reason())) {
      errors.add(new FieldError("reason", "Say why they are moved."));
    }
    if (!errors.isEmpty()) {
      throw new Problem(400, "move", "Not understood", "Correct what is marked below.", errors);
    }
  }

  private List<FieldError> wrongEnds(Asked asked) {
    List<FieldError> errors = new ArrayList<>();
    boolean from = places.exists(asked.from());
    boolean to = places.exists(asked.to());
    if (!from && !asked.from().equals(SUPPLIER)) {
      errors.add(new FieldError("from", "Choose where they come from."));
    }
    if (!to && !Set.of(SUPPLIER, SCRAP).contains(asked.to())) {
      errors.add(new FieldError("to", "Choose where they go."));
    }
    if (errors.isEmpty() && (!from && !to || asked.from().equals(asked.to()))) {
      errors.add(new FieldError("to", "One end must be a place, and the other not the same."));
    }
    return errors;
  }
}
