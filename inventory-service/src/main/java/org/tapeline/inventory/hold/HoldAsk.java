package org.tapeline.inventory.hold;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.tapeline.inventory.helmet.AssetTag;
import org.tapeline.journal.quarkus.http.MeantDay;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * A hold as it is asked for: the words of a form or a request, before they are understood.
 *
 * @param reason recall, standards-notice or own-finding
 * @param reference the number on the notice; capital letters, digits and ./- only
 * @param lots in any number, between blanks, commas or lines; so are the tags
 * @param madeFrom a day such as 2025-03-01
 */
public record HoldAsk(
    String reason,
    String reference,
    String model,
    String lots,
    String madeFrom,
    String madeTo,
    String tags) {
  static final HoldAsk BLANK = new HoldAsk("", "", "", "", "", "", "");
  static final int MOST_TAGS = 20_000;
  private static final Set<String> REASONS = Set.of("recall", "standards-notice", "own-finding");
  private static final String REFERENCE = "[A-Z0-9][A-Z0-9./-]{0,39}";

  public HoldAsk {
    reason = clean(reason);
    reference = clean(reference).toUpperCase(Locale.ROOT);
    model = clean(model);
    lots = clean(lots);
    madeFrom = clean(madeFrom);
    madeTo = clean(madeTo);
    tags = clean(tags);
  }

  private static String clean(String value) {
    return value == null ? "" : value.strip();
  }

  /** Blanks, commas, semicolons and lines part them. */
  static List<String> words(String list) {
    return list.isBlank() ? List.of() : List.of(list.strip().split("[\\s,;]+"));
  }

  /**
   * What it concerns.
   *
   * @throws Problem with what is wrong in which field; also when it says nothing
   */
  HoldCriteria criteria() {
    List<Problem.FieldError> errors = new ArrayList<>();
    if (!REASONS.contains(reason)) {
      errors.add(new Problem.FieldError("reason", "Choose why."));
    }
    if (!reference.matches(REFERENCE)) {
      errors.add(
          new Problem.FieldError(
              "reference",
              "Give the number as printed on the notice: up to 40 letters, digits, dots, slashes"
                  + " and hyphens, no blanks."));
    }
    if (!model.isEmpty() && !model.matches("[a-z0-9][a-z0-9-]{0,59}")) {
      errors.add(new Problem.FieldError("model", "Give the model's code, such as model-a."));
    }
    for (String lot : words(lots)) {
      if (!lot.matches("[A-Za-z0-9./-]{1,40}")) {
        errors.add(new Problem.FieldError("lots", "Not a lot: " + lot + ". Copy the label."));
      }
    }
    Optional<LocalDate> from = day("madeFrom", madeFrom, errors);
    Optional<LocalDate> to = day("madeTo", madeTo, errors);
    if (from.isPresent() && to.filter(last -> last.isBefore(from.get())).isPresent()) {
      errors.add(new Problem.FieldError("madeTo", "This day is before the first one."));
    }
    Set<String> listed = tags("tags", tags, errors);
    refuse(errors);
    Optional<String> ofModel = Optional.of(model).filter(m -> !m.isEmpty());
    HoldCriteria criteria = new HoldCriteria(ofModel, new TreeSet<>(words(lots)), from, to, listed);
    if (criteria.saysNothing()) {
      String sentence =
          "This would concern every helmet. Give a model, lots, days of manufacture or tags.";
      throw Problem.badRequest("no-criteria", sentence, new Problem.FieldError("model", sentence));
    }
    return criteria;
  }

  private static Optional<LocalDate> day(
      String field, String text, List<Problem.FieldError> errors) {
    try {
      return text.isEmpty() ? Optional.empty() : Optional.of(MeantDay.parse(text));
    } catch (DateTimeException e) {
      errors.add(new Problem.FieldError(field, "Write the day as 2025-03-01."));
      return Optional.empty();
    }
  }

  static Set<String> tags(String field, String text, List<Problem.FieldError> errors) {
    Set<String> tags = new TreeSet<>();
    for (String word : words(text)) {
      String tag = word.toUpperCase(Locale.ROOT);
      try {
        tags.add(new AssetTag(tag).value());
      } catch (IllegalArgumentException e) {
        errors.add(new Problem.FieldError(field, tag + ": " + e.getMessage()));
      }
    }
    if (tags.size() > MOST_TAGS) {
      errors.add(new Problem.FieldError(field, "At most " + MOST_TAGS + " tags at a time."));
    }
    return tags;
  }

  static void refuse(List<Problem.FieldError> errors) {
    if (!errors.isEmpty()) {
      String sentence = "Look at what is said beside the fields.";
      throw new Problem(400, "hold", "Not understood", sentence, errors);
    }
  }
}
