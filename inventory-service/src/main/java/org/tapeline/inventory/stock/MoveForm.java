package org.tapeline.inventory.stock;

import java.util.List;
import org.tapeline.inventory.stock.HandMoves.Asked;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** The form for a move by hand: as it was filled in, with what is wrong about it. */
public record MoveForm(
    String from, String to, String part, String quantity, String reason, List<FieldError> errors) {

  static MoveForm of(String from, String to, String part, String quantity, String reason) {
    return new MoveForm(text(from), text(to), text(part), text(quantity), text(reason), List.of());
  }

  private static String text(String said) {
    return said == null ? "" : said.strip();
  }

  /** What is wrong with that field; empty when nothing is. */
  public String error(String field) {
    return errors.stream()
        .filter(e -> e.field().equals(field))
        .map(FieldError::message)
        .findFirst()
        .orElse("");
  }

  Asked asked() {
    String[] both = part.split("\\|", 2);
    int pieces = quantity.matches("[0-9]{1,6}") ? Integer.parseInt(quantity) : 0;
    return new Asked(from, to, both[0], both.length > 1 ? both[1] : Shelf.ANY, pieces, reason);
  }

  MoveForm with(List<FieldError> wrong) {
    return new MoveForm(from, to, part, quantity, reason, wrong);
  }
}
