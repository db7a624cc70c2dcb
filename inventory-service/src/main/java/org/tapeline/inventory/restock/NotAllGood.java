package org.tapeline.inventory.restock;

import java.util.List;
import java.util.Optional;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * The form for what came, but not all good: as it was filled in, with what is wrong about it.
 *
 * @param came how many came, the damaged ones too
 * @param damaged how many of them cannot be used
 * @param happened to the one piece of a transfer: {@code damaged} or {@code not-arrived}
 */
public record NotAllGood(
    String came, String damaged, String happened, List<Problem.FieldError> errors) {
  private static final int MOST = 1000;

  static final NotAllGood BLANK = new NotAllGood("", "0", "", List.of());

  static NotAllGood of(String came, String damaged, String happened) {
    return new NotAllGood(text(came), text(damaged), text(happened), List.of());
  }

  NotAllGood with(List<Problem.FieldError> wrong) {
    return new NotAllGood(came, damaged, happened, wrong);
  }

  /** What is wrong with that field; empty when nothing is. */
  public String error(String field) {
    return errors.stream()
        .filter(e -> e.field().equals(field))
        .map(Problem.FieldError::message)
        .findFirst()
        .orElse("");
  }

  /**
   * @throws Problem that names the field and what to write there
   */
  Receipt receipt(Restock asked) {
    return asked.onePiece() ? ofTransfer() : ofPieces(asked);
  }

  private Receipt ofTransfer() {
    return switch (happened) {
      case "damaged" -> Receipt.of(0, 1);
      case "not-arrived" -> Receipt.of(0, 0);
      default -> throw wrong("happened", "Choose what happened to it.");
    };
  }

  /** No more can come from another place than was sent; of that, none may arrive. */
  private Receipt ofPieces(Restock asked) {
    int least = asked.betweenPlaces() ? 0 : 1;
    int most = asked.betweenPlaces() ? asked.quantity() : MOST;
    int pieces =
        number(came, least, most)
            .orElseThrow(
                () ->
                    wrong(
                        "came",
                        "Write a whole number from "
                            + least
                            + " to "
                            + most
                            + ". If nothing comes, choose Will not come."));
    int bad =
        number(damaged, 0, pieces)
            .orElseThrow(() -> wrong("damaged", "Write a whole number from 0 to " + pieces + "."));
    return Receipt.of(pieces - bad, bad);
  }

  private static Optional<Integer> number(String text, int least, int most) {
    return Optional.of(text)
        .filter(t -> t.matches("[0-9]{1,6}"))
        .map(Integer::valueOf)
        .filter(n -> n >= least && n <= most);
  }

  private static Problem wrong(String field, String message) {
    return Problem.badRequest(
        field, "Correct what is marked below.", new Problem.FieldError(field, message));
  }

  private static String text(String said) {
    return said == null ? "" : said.strip();
  }
}
