package org.tapeline.fitting.overview;

import java.util.HashMap;
import java.util.Map;
import java.util.UUID;
import org.tapeline.fitting.fitday.FitDayBody;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * What was typed about a fit day, and what is wrong with it.
 *
 * @param id tells the entries of several forms on a page apart
 * @param commandId made with the form, so that sending it twice does it once
 */
public record FitDayForm(
    String id,
    UUID commandId,
    Map<String, String> typed,
    Map<String, String> errors,
    String problem) {

  static FitDayForm of(String id, UUID commandId, Map<String, String> typed) {
    return new FitDayForm(id, commandId, typed, Map.of(), "");
  }

  /** The same with what is wrong; it is sent with a new command id, since it will say otherwise. */
  FitDayForm refused(Problem refusal) {
    Map<String, String> wrong = new HashMap<>();
    refusal.errors().forEach(e -> wrong.put(e.field(), e.message()));
    return new FitDayForm(id, commandId, typed, wrong, refusal.getMessage());
  }

  public String value(String entry) {
    return typed.getOrDefault(entry, "");
  }

  public String error(String entry) {
    return errors.getOrDefault(entry, "");
  }

  FitDayBody body() {
    return new FitDayBody(
        value("field"),
        value("date"),
        value("opens"),
        value("closes"),
        number("fitters"),
        value("minutesPerFit").isBlank() ? null : number("minutesPerFit"));
  }

  /** What is no number is one that the rules refuse. */
  private Integer number(String entry) {
    String text = value(entry).strip();
    return text.matches("[0-9]{1,3}") ? Integer.valueOf(text) : 0;
  }
}
