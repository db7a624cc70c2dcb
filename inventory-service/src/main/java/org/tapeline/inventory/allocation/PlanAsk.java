package org.tapeline.inventory.allocation;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.allocation.PlanWish.Bought;
import org.tapeline.inventory.allocation.PlanWish.Sort;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/**
 * The form for a new plan, as it was filled in, with what is wrong about it.
 *
 * @param sort {@code hold}, {@code cases}, {@code season} or {@code even-out}
 * @param hold the hold's id
 * @param field the field's code, empty for all
 * @param without places whose helmets stay where they are
 * @param kind {@code model:size} of helmets to buy, empty for none
 * @param place where they would come in
 * @param pieces how many
 * @param otherModels any text for yes
 */
public record PlanAsk(
    String sort,
    String hold,
    String field,
    List<String> without,
    String kind,
    String place,
    String pieces,
    String otherModels,
    List<FieldError> errors) {

  public PlanAsk {
    sort = text(sort);
    hold = text(hold);
    field = text(field);
    without = without == null ? List.of() : List.copyOf(without);
    kind = text(kind);
    place = text(place);
    pieces = text(pieces);
    otherModels = text(otherModels);
    errors = errors == null ? List.of() : errors;
  }

  static final PlanAsk BLANK =
      new PlanAsk("season", "", "", List.of(), "", "", "", "yes", List.of());

  static PlanAsk ofHold(UUID hold) {
    return new PlanAsk("hold", hold.toString(), "", List.of(), "", "", "", "yes", List.of());
  }

  /** The form as it was for that plan, to be changed. */
  static PlanAsk of(PlanWish wish) {
    Optional<Bought> bought = wish.bought().stream().findFirst();
    boolean hold = wish.sort() == Sort.HOLD;
    return new PlanAsk(
        wish.sort().code(),
        hold ? wish.about() : "",
        hold ? "" : wish.about(),
        wish.without(),
        bought.map(b -> b.model() + ":" + b.size()).orElse(""),
        bought.map(Bought::place).orElse(""),
        bought.map(b -> String.valueOf(b.pieces())).orElse(""),
        wish.otherModels() ? "yes" : "",
        List.of());
  }

  PlanAsk with(List<FieldError> wrong) {
    return new PlanAsk(sort, hold, field, without, kind, place, pieces, otherModels, wrong);
  }

  /** What is wrong with that field; empty when nothing is. */
  public String error(String name) {
    return errors.stream()
        .filter(e -> e.field().equals(name))
        .map(FieldError::message)
        .findFirst()
        .orElse("");
  }

  /**
   * @param places codes of all places
   * @throws Problem that names the fields and what to write there
   */
  PlanWish wish(List<String> places) {
    List<FieldError> wrong = new ArrayList<>();
    Optional<Sort> known = Sort.of(sort);
    if (known.isEmpty()) {
      wrong.add(new FieldError("sort", "Choose for whom the plan is."));
    }
    if (sort.equals("hold") && !isId(hold)) {
      wrong.add(new FieldError("hold", "Choose the hold."));
    }
    if (!field.isEmpty() && !places.contains(field)) {
      wrong.add(new FieldError("field", "Choose a field, or all."));
    }
    if (!places.containsAll(without)) {
      wrong.add(new FieldError("without", "Choose places of the list."));
    }
    List<Bought> bought = bought(places, wrong);
    if (!wrong.isEmpty()) {
      throw Problem.badRequest(
          "plan", "Correct what is marked below.", wrong.toArray(FieldError[]::new));
    }
    return new PlanWish(
        known.orElseThrow(),
        about(known.orElseThrow()),
        List.of(),
        without,
        bought,
        !otherModels.isEmpty());
  }

  /** Spares are evened out between all fields or not at all: else others would be left bare. */
  private String about(Sort known) {
    return switch (known) {
      case HOLD -> hold;
      case CASES, SEASON -> field;
      case EVEN_OUT -> "";
    };
  }

  private List<Bought> bought(List<String> places, List<FieldError> wrong) {
    if (kind.isEmpty()) {
      return List.of();
    }
    String[] words = kind.split(":");
    if (words.length != 2) {
      wrong.add(new FieldError("kind", "Choose a model and size."));
    } else if (!places.contains(place)) {
      wrong.add(new FieldError("place", "Choose where they would come in."));
    } else if (!pieces.matches("[0-9]{1,4}") || Integer.parseInt(pieces) < 1) {
      wrong.add(new FieldError("pieces", "Write a whole number from 1 to 9999."));
    } else {
      return List.of(new Bought(words[0], words[1], place, Integer.parseInt(pieces)));
    }
    return List.of();
  }

  private static boolean isId(String text) {
    try {
      return UUID.fromString(text).toString().equalsIgnoreCase(text);
    } catch (IllegalArgumentException e) {
      return false;
    }
  }

  private static String text(String said) {
    return said == null ? "" : said.strip();
  }
}
