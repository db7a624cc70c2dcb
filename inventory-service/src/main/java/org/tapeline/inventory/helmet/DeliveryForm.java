package org.tapeline.inventory.helmet;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.tapeline.journal.quarkus.http.MeantDay;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** A delivery as it was typed, in a form or in JSON; the days as 2027-08-01. */
public record DeliveryForm(
    String model,
    String size,
    String lot,
    String manufacturedOn,
    String certifiedUntil,
    String place) {
  static final DeliveryForm BLANK = new DeliveryForm("", "", "", "", "", "");

  private static final String CODE = "[a-z0-9][a-z0-9-]{0,59}";

  public DeliveryForm {
    model = said(model);
    size = said(size);
    lot = said(lot);
    manufacturedOn = said(manufacturedOn);
    certifiedUntil = said(certifiedUntil);
    place = said(place);
  }

  private static String said(String text) {
    return text == null ? "" : text.strip();
  }

  /**
   * @throws Problem 400 with everything that is wrong, each at its field
   */
  Delivery checked(LocalDate today, Predicate<String> isPlace) {
    List<FieldError> errors = kindErrors(isPlace);
    if (!lot.matches("[A-Za-z0-9./-]{1,40}")) {
      errors.add(new FieldError("lot", "Give the lot as printed on the label."));
    }
    Optional<LocalDate> made = day("manufacturedOn", manufacturedOn, errors);
    if (manufacturedOn.isEmpty()) {
      errors.add(new FieldError("manufacturedOn", "Give the day of manufacture: 2026-01-15."));
    } else if (made.filter(day -> day.isAfter(today)).isPresent()) {
      errors.add(new FieldError("manufacturedOn", "This day is still to come."));
    }
    Optional<LocalDate> until = day("certifiedUntil", certifiedUntil, errors);
    if (made.isPresent() && until.filter(day -> day.isBefore(made.get())).isPresent()) {
      errors.add(new FieldError("certifiedUntil", "This is before it was made. Read it again."));
    }
    refuse(errors);
    return new Delivery(model, size, lot, made.orElseThrow(), until, place);
  }

  /** The kind of helmet and the place. */
  List<FieldError> kindErrors(Predicate<String> isPlace) {
    List<FieldError> errors = new ArrayList<>();
    if (!model.matches(CODE)) {
      errors.add(new FieldError("model", "Give the model's code, such as model-a."));
    }
    if (!size.matches(CODE)) {
      errors.add(new FieldError("size", "Give the size, such as youth-medium."));
    }
    if (!isPlace.test(place)) {
      errors.add(new FieldError("place", "Give a place's code."));
    }
    return errors;
  }

  static void refuse(List<FieldError> errors) {
    if (!errors.isEmpty()) {
      throw Problem.badRequest(
          "delivery", errors.getFirst().message(), errors.toArray(FieldError[]::new));
    }
  }

  static Optional<LocalDate> day(String field, String typed, List<FieldError> errors) {
    try {
      return typed.isEmpty() ? Optional.empty() : Optional.of(MeantDay.parse(typed));
    } catch (DateTimeException e) {
      errors.add(new FieldError(field, "Write the day as 2027-08-01."));
      return Optional.empty();
    }
  }
}
