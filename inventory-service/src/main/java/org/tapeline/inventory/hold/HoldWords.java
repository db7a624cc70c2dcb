package org.tapeline.inventory.hold;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.tapeline.journal.quarkus.http.Problem;

/** What is wrong with which field of a form; nothing for those that are right. */
public record HoldWords(String sentence, Map<String, String> errors) {
  static final HoldWords NONE = new HoldWords("", Map.of());

  static HoldWords of(Problem problem) {
    List<Problem.FieldError> all = problem.errors();
    return new HoldWords(
        problem.getMessage(),
        all.stream()
            .collect(
                Collectors.toMap(
                    Problem.FieldError::field,
                    Problem.FieldError::message,
                    (a, b) -> a + " " + b)));
  }

  public String error(String field) {
    return errors.getOrDefault(field, "");
  }
}
