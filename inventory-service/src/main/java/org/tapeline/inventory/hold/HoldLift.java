package org.tapeline.inventory.hold;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.tapeline.journal.quarkus.http.Problem;

/**
 * What of a hold is to be lifted, as it is asked for.
 *
 * @param scope whole, lots, place or tags
 * @param lots for the scope lots: what comes of these later is not held either
 * @param place for the scope place: the helmets that are there now; what comes later is held
 * @param tags for the scope tags
 */
public record HoldLift(String scope, String lots, String place, String tags) {
  static final HoldLift BLANK = new HoldLift("", "", "", "");

  public HoldLift {
    scope = scope == null ? "" : scope.strip();
    lots = lots == null ? "" : lots.strip();
    place = place == null ? "" : place.strip();
    tags = tags == null ? "" : tags.strip();
  }

  /**
   * What is meant, with nothing that is not of its scope.
   *
   * @throws Problem with what is wrong in which field
   */
  Meant meant() {
    List<Problem.FieldError> errors = new ArrayList<>();
    Set<String> ofLots = scope.equals("lots") ? new TreeSet<>(HoldAsk.words(lots)) : Set.of();
    Set<String> ofTags = scope.equals("tags") ? HoldAsk.tags("tags", tags, errors) : Set.of();
    switch (scope) {
      case "whole" -> {}
      case "lots" -> need(!ofLots.isEmpty(), "lots", "Give the lots.", errors);
      case "place" -> need(!place.isEmpty(), "place", "Choose the place.", errors);
      case "tags" ->
          need(!(ofTags.isEmpty() && errors.isEmpty()), "tags", "Give the tags.", errors);
      default -> need(false, "scope", "Say what is to be lifted.", errors);
    }
    HoldAsk.refuse(errors);
    return new Meant(scope, ofLots, scope.equals("place") ? place : "", ofTags);
  }

  private static void need(
      boolean there, String field, String sentence, List<Problem.FieldError> errors) {
    if (!there) {
      errors.add(new Problem.FieldError(field, sentence));
    }
  }

  /** What is lifted: empty parts do not matter. */
  record Meant(String scope, Set<String> lots, String place, Set<String> tags) {
    String lotList() {
      return String.join(",", lots);
    }

    String tagList() {
      return String.join(",", tags);
    }
  }
}
