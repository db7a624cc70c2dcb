package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.stock.CountSheet.Line;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/**
 * Takes counts: all lines of one, or none when something is not as it was when it was looked at.
 */
@ApplicationScoped
public class Counts {
  private final StockDesk stock;
  private final Ledger ledger;
  private final StockPolicyFile policy;
  private final Places places;
  private final CommandLog commands;
  private final Caller caller;

  Counts(
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

  /** How many lines were booked, and how many of them differed. */
  public record Booked(String place, int lines, int differed) {}

  /**
   * @throws Problem 400 for what is wrong in a line, 409 when the books have changed since they
   *     were looked at; the field of an error ends with the number of its line, from 0
   */
  public Answer take(CountSheet sheet, UUID id) {
    mayCountAt(sheet.place());
    check(sheet);
    return commands.once(
        id,
        "count-stock",
        sheet,
        () -> {
          book(sheet, Cause.command(id));
          long differed = sheet.lines().stream().filter(l -> l.variance() != 0).count();
          return Answer.of(200, new Booked(sheet.place(), sheet.lines().size(), (int) differed));
        });
  }

  /**
   * @throws Problem when there is no such place, or it is another's
   */
  void mayCountAt(String place) {
    if (place == null || !places.exists(place)) {
      throw Problem.badRequest(
          "place",
          "No such place. Choose one of the list.",
          new FieldError("place", "Choose a place of the list."));
    }
    if (!caller.worksAs("warehouse") && !caller.mayWorkAt(place)) {
      throw Problem.otherField("The place " + place + " is not one of your fields.");
    }
  }

  private void check(CountSheet sheet) {
    List<FieldError> errors =
        sheet.wrong(policy.inForce()).stream()
            .map(w -> new FieldError(w.field() + "-" + w.line(), w.sentence()))
            .toList();
    if (!errors.isEmpty()) {
      throw new Problem(400, "count", "Not understood", "Correct what is marked below.", errors);
    }
  }

  private void book(CountSheet sheet, Cause cause) {
    String place = sheet.place();
    // Always in the same order: else two counts would wait for each other.
    Set<String> items = new TreeSet<>(sheet.lines().stream().map(Line::item).toList());
    items.forEach(item -> ledger.lock(place, item));
    refuseWhatChanged(sheet);
    sheet.lines().stream()
        .sorted(Comparator.comparing(Line::item).thenComparing(Line::model))
        .forEach(
            l -> {
              String reason = l.variance() == 0 ? "" : l.reason();
              stock.count(
                  place, l.item(), l.model(), l.counted(), l.book(), reason, caller.id(), cause);
            });
    items.forEach(item -> stock.changed(place, item, cause));
  }

  private void refuseWhatChanged(CountSheet sheet) {
    List<FieldError> changed = new ArrayList<>();
    for (int i = 0; i < sheet.lines().size(); i++) {
      Line line = sheet.lines().get(i);
      int now = ledger.pieces(sheet.place(), line.item(), line.model());
      if (now != line.book()) {
        changed.add(new FieldError("book-" + i, meanwhile(line.book(), now)));
      }
    }
    if (!changed.isEmpty()) {
      throw new Problem(
          409,
          "books-changed",
          "Not possible now",
          "The books have changed since you looked at them. Nothing was booked and nothing you"
              + " typed is lost: look at the lines that are marked and confirm again.",
          changed);
    }
  }

  static String meanwhile(int before, int now) {
    return "The books said "
        + before
        + " before and say "
        + now
        + " now: somebody booked"
        + " meanwhile. If that was before you counted, your number stands; if after, count again.";
  }
}
