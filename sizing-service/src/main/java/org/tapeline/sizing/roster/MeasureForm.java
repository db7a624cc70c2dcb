package org.tapeline.sizing.roster;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.sizing.reading.ReadingText;
import org.tapeline.sizing.reading.ReadingText.Understood;

/**
 * The form for two or three readings: what was typed is kept, what is wrong stands beside it.
 *
 * @param problem what is wrong with all of it; empty when nothing is
 * @param asksForThird the readings are fine, but lie too far apart
 * @param confirm the value is unusual and wants a confirmation
 */
record MeasureForm(
    UUID commandId,
    List<Field> fields,
    String hair,
    String problem,
    boolean asksForThird,
    boolean confirm) {
  private static final Set<String> CONFIRMED = Set.of("smaller-than-before", "unusual-for-age");
  private static final List<String> IDS = List.of("first", "second", "third");
  private static final List<String> LABELS =
      List.of("First reading", "Second reading", "Third reading");

  /**
   * One reading of the form.
   *
   * @param said what was understood; empty when nothing was
   * @param error why it was not; empty when it was
   */
  record Field(String id, String label, String typed, String said, String error, boolean focus) {}

  /** What came from the form, as it was typed. */
  record Typed(List<String> readings, String hair, boolean confirmed) {
    Measuring.Entry entry() {
      return new Measuring.Entry(readings, confirmed, hair);
    }
  }

  /** Fields that did not come are {@code null}. */
  static Typed typed(String first, String second, String third, String hair, String confirmed) {
    return new Typed(
        List.of(text(first), text(second), text(third)), text(hair), "yes".equals(confirmed));
  }

  private static String text(String typed) {
    return typed == null ? "" : typed.strip();
  }

  static MeasureForm empty() {
    return empty("usual");
  }

  /**
   * @param hair usual, short, long or braids
   */
  static MeasureForm empty(String hair) {
    return new MeasureForm(
        UuidV7.next(), fields(List.of("", ""), List.of("", ""), 0), hair, "", false, false);
  }

  static MeasureForm after(Problem problem, UUID commandId, Typed form) {
    List<String> typed = form.readings();
    boolean asksForThird = problem.code().equals("third-reading-needed");
    boolean three = asksForThird || !typed.get(2).isBlank();
    List<String> errors = new ArrayList<>();
    for (int i = 0; i < (three ? 3 : 2); i++) {
      errors.add(asksForThird ? "" : error(problem, i));
    }
    return new MeasureForm(
        commandId,
        fields(typed, errors, asksForThird ? 2 : firstWrong(errors)),
        form.hair(),
        problem.getMessage(),
        asksForThird,
        CONFIRMED.contains(problem.code()));
  }

  private static List<Field> fields(List<String> typed, List<String> errors, int focus) {
    List<Field> fields = new ArrayList<>();
    for (int i = 0; i < errors.size(); i++) {
      String said = said(typed.get(i));
      fields.add(
          new Field(IDS.get(i), LABELS.get(i), typed.get(i), said, errors.get(i), i == focus));
    }
    return fields;
  }

  private static String said(String typed) {
    return switch (ReadingText.understand(typed)) {
      case Understood.Ok ok -> ok.reading().saidBack();
      case Understood.Not not -> "";
    };
  }

  private static int firstWrong(List<String> errors) {
    int wrong = 0;
    while (wrong < errors.size() && errors.get(wrong).isEmpty()) {
      wrong++;
    }
    return wrong;
  }

  private static String error(Problem problem, int reading) {
    return problem.errors().stream()
        .filter(e -> e.field().equals("readings[" + reading + "]"))
        .map(Problem.FieldError::message)
        .findFirst()
        .orElse("");
  }
}
