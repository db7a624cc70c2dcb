package org.tapeline.acceptance;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

/**
 * Which people an answer may not tell of, by who asked: a fitter and a coach of nobody who is not
 * theirs, neither by name nor by id; the warehouse and somebody without log-in of nobody by name.
 */
final class AccessNames {
  private static final Set<String> FITTERS_FIELDS = Set.of("NORTH", "RIVER");
  private static final String COACHS_TEAM = "U10-HAWKS";

  private final List<JsonNode> players = new ArrayList<>();
  private final Set<String> comeToTheFitter = new HashSet<>();

  AccessNames() {
    StreamSupport.stream(Tapeline.get("manager", "/sizing/api/players").spliterator(), false)
        .forEach(players::add);
    // A re-fit may be booked at another field: its fitters see who comes.
    Tapeline.get("manager", "/fitting/api/refits")
        .forEach(
            refit -> {
              if (FITTERS_FIELDS.contains(refit.at("/booking/field").asText())) {
                comeToTheFitter.add(refit.path("player").asText());
              }
            });
  }

  /** What of others stands in an answer to that role; empty when all is well. */
  List<String> othersIn(String text, AccessRole role) {
    return switch (role) {
      case MANAGER -> List.of();
      case NOBODY, WAREHOUSE -> found(text, players.stream().map(AccessNames::name));
      case COACH -> found(text, nameAndId(p -> p.path("team").asText().equals(COACHS_TEAM)));
      case FITTER -> found(text, nameAndId(this::ofTheFitter));
    };
  }

  private boolean ofTheFitter(JsonNode player) {
    return FITTERS_FIELDS.contains(player.path("field").asText())
        || comeToTheFitter.contains(player.path("player").asText());
  }

  /** Two people of the demo may have one name: it tells of another only when no own one has it. */
  private Stream<String> nameAndId(Predicate<JsonNode> own) {
    Set<String> ownNames =
        players.stream().filter(own).map(AccessNames::name).collect(Collectors.toSet());
    return players.stream()
        .filter(own.negate())
        .flatMap(p -> Stream.of(name(p), p.path("player").asText()))
        .filter(word -> !ownNames.contains(word));
  }

  private static String name(JsonNode player) {
    return player.path("name").asText();
  }

  private static List<String> found(String text, Stream<String> words) {
    return words.filter(text::contains).limit(3).toList();
  }
}
