package org.tapeline.fitting.session;

import java.util.List;
import java.util.Optional;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Numbers as they are typed into a form: with a comma or a point, and any kind of minus. */
final class Typed {
  private Typed() {}

  /**
   * @throws Problem when it is not a temperature
   */
  static Optional<Double> celsius(String typed) {
    return number(
        typed,
        "-?[0-9]{1,2}(\\.[0-9])?",
        "airCelsius",
        "Air temperature in degrees Celsius, such as 21, or leave it empty.");
  }

  /**
   * @throws Problem when it is not a length
   */
  static Optional<Double> millimetres(String typed) {
    return number(
        typed,
        "[0-9]{1,3}(\\.[0-9])?",
        "valueMm",
        "A length in millimetres, such as 25, or leave it empty.");
  }

  private static Optional<Double> number(
      String typed, String pattern, String field, String message) {
    if (typed == null || typed.isBlank()) {
      return Optional.empty();
    }
    String plain = typed.strip().replace(',', '.').replace('\u2212', '-');
    if (!plain.matches(pattern)) {
      throw new Problem(
          422, "entry", "Not recorded", message, List.of(new FieldError(field, message)));
    }
    return Optional.of(Double.valueOf(plain));
  }
}
