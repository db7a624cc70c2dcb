package org.tapeline.inventory.stock;

import jakarta.ws.rs.core.MultivaluedMap;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.stock.CountSheet.Line;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/**
 * A count as it stands in the form: what was typed, what the books said, what is wrong about it.
 *
 * @param showBook whether whoever counts sees what the books say
 */
public record CountForm(String place, boolean showBook, List<Row> rows) {

  /**
   * A row of it.
   *
   * @param seen what the books said when the list was made
   * @param now what they say
   * @param counted as typed
   */
  public record Row(
      String item,
      String model,
      int seen,
      int now,
      String counted,
      String reason,
      List<FieldError> errors) {

    public boolean filled() {
      return !counted.isEmpty();
    }

    public boolean changedMeanwhile() {
      return seen != now;
    }

    /** Whole numbers only; anything else counts as none. */
    Optional<Integer> number() {
      return Optional.of(counted)
          .filter(c -> c.matches("[0-9]{1,9}"))
          .map(Integer::valueOf)
          .filter(n -> n <= CountSheet.MOST);
    }

    public int variance() {
      return number().orElse(now) - now;
    }

    /** Such as {@code +2}, {@code −1} or {@code 0}. */
    public String varianceSaid() {
      int n = variance();
      return n > 0 ? "+" + n : n < 0 ? "\u2212" + -n : "0";
    }

    /** What is wrong with that field; empty when nothing is. */
    public String error(String field) {
      return errors.stream()
          .filter(e -> e.field().equals(field))
          .map(FieldError::message)
          .findFirst()
          .orElse("");
    }

    Line line() {
      return new Line(item, model, number().orElse(-1), now, variance() == 0 ? "" : reason);
    }

    Row withNow(int pieces) {
      return new Row(item, model, seen, pieces, counted, reason, errors);
    }

    Row with(List<FieldError> wrong) {
      return new Row(item, model, seen, now, counted, reason, wrong);
    }
  }

  static CountForm blank(String place, boolean showBook, List<Books.Line> lines) {
    return new CountForm(
        place,
        showBook,
        lines.stream()
            .map(l -> new Row(l.item(), l.model(), l.pieces(), l.pieces(), "", "", List.of()))
            .toList());
  }

  static CountForm read(MultivaluedMap<String, String> form) {
    List<Row> rows = new ArrayList<>();
    for (int i = 0; form.containsKey("item-" + i); i++) {
      String item = text(form, "item-" + i);
      String counted = text(form, "counted-" + i);
      int seen = whole(text(form, "seen-" + i));
      int now = form.containsKey("book-" + i) ? whole(text(form, "book-" + i)) : seen;
      if (!item.isEmpty() || !counted.isEmpty()) {
        rows.add(
            new Row(
                item,
                text(form, "model-" + i),
                seen,
                now,
                counted,
                text(form, "reason-" + i),
                List.of()));
      }
    }
    return new CountForm(text(form, "place"), text(form, "book").equals("shown"), rows);
  }

  private static String text(MultivaluedMap<String, String> form, String field) {
    String value = form.getFirst(field);
    return value == null ? "" : value.strip();
  }

  private static int whole(String text) {
    return text.matches("-?[0-9]{1,9}") ? Integer.parseInt(text) : 0;
  }

  List<Row> filled() {
    return rows.stream().filter(Row::filled).toList();
  }

  /** Whether what is typed are numbers. */
  CountForm checked() {
    return new CountForm(
        place,
        showBook,
        rows.stream()
            .map(
                r ->
                    r.filled() && r.number().isEmpty()
                        ? r.with(
                            List.of(
                                new FieldError(
                                    "counted",
                                    "Write a whole number from 0 to " + CountSheet.MOST + ".")))
                        : r)
            .toList());
  }

  boolean good() {
    return rows.stream().allMatch(r -> r.errors().isEmpty());
  }
}
