package org.tapeline.inventory.stock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.tapeline.inventory.stock.CountForm.Row;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Fills the form of a count with what the books say now, and keeps what was typed. */
@ApplicationScoped
public class CountForms {
  private final Books books;
  private final Ledger ledger;

  CountForms(Books books, Ledger ledger) {
    this.books = books;
    this.ledger = ledger;
  }

  CountForm blank(String place, boolean showBook) {
    return CountForm.blank(place, showBook, books.at(place));
  }

  /** Every part of the place, with what was typed for some of them. */
  CountForm merged(CountForm form) {
    List<Row> rows = new ArrayList<>(blank(form.place(), form.showBook()).rows());
    for (Row typed : form.rows()) {
      rows.removeIf(r -> r.item().equals(typed.item()) && r.model().equals(typed.model()));
      rows.add(now(form.place(), typed));
    }
    rows.sort(Comparator.comparing(Row::item).thenComparing(Row::model));
    return new CountForm(form.place(), form.showBook(), rows);
  }

  /** The lines that were filled in. */
  CountForm withNow(CountForm form) {
    return new CountForm(
        form.place(),
        form.showBook(),
        form.filled().stream().map(r -> now(form.place(), r)).toList());
  }

  private Row now(String place, Row row) {
    return row.withNow(ledger.pieces(place, row.item(), row.model()));
  }

  /** The same, with what is wrong about each line. */
  CountForm marked(CountForm form, List<FieldError> errors) {
    CountForm now = withNow(form);
    List<Row> rows =
        IntStream.range(0, now.rows().size())
            .mapToObj(i -> now.rows().get(i).with(ofLine(i, errors)))
            .toList();
    return new CountForm(now.place(), now.showBook(), rows);
  }

  /** The field of an error ends with the number of its line. */
  private static List<FieldError> ofLine(int line, List<FieldError> errors) {
    String end = "-" + line;
    return errors.stream()
        .filter(e -> e.field().endsWith(end))
        .map(e -> new FieldError(withoutEnd(e.field(), end), e.message()))
        .toList();
  }

  private static String withoutEnd(String field, String end) {
    return field.substring(0, field.length() - end.length());
  }
}
