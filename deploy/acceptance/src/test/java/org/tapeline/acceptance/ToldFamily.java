package org.tapeline.acceptance;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka.Envelope;

/** A player with two guardians and what happens: a re-fit, one that is moved, or a lapse. */
final class ToldFamily {
  private static final EventContracts CONTRACTS = EventContracts.load();
  private static final String FITTING = "org.tapeline.fitting.";
  private static final Instant SATURDAY = Instant.parse("2035-09-15T15:00:00Z");
  private static final Instant SUNDAY = Instant.parse("2035-09-16T16:30:00Z");

  private enum Story {
    REFIT,
    MOVED_REFIT,
    LAPSE
  }

  private final UUID player = UUID.randomUUID();
  private final UUID about = UUID.randomUUID();
  private final List<UUID> guardians = List.of(UUID.randomUUID(), UUID.randomUUID());
  private final Story story;
  private final List<Envelope> causes;

  private ToldFamily(Story story) {
    this.story = story;
    this.causes =
        switch (story) {
          case REFIT -> List.of(opened(), booked(2, SATURDAY));
          case MOVED_REFIT -> List.of(opened(), booked(2, SATURDAY), booked(3, SUNDAY));
          case LAPSE -> List.of(signOff("signed-off", 1), signOff("sign-off-lapsed", 2));
        };
  }

  static List<ToldFamily> some(int count) {
    Story[] stories = Story.values();
    return IntStream.range(0, count)
        .mapToObj(i -> new ToldFamily(stories[i % stories.length]))
        .toList();
  }

  List<Envelope> causes() {
    return causes;
  }

  /** The family as sizing tells it. */
  Stream<Envelope> people() {
    List<Envelope> details = new ArrayList<>();
    ObjectNode child = example("org.tapeline.sizing.player-details.v1");
    child.put("player", player.toString()).put("givenName", "Ada");
    child.putPOJO("guardians", guardians);
    details.add(person("player-details", player, child));
    for (UUID guardian : guardians) {
      ObjectNode adult = example("org.tapeline.sizing.guardian-details.v1");
      adult.put("guardian", guardian.toString()).put("email", address(guardian));
      adult.remove("phone");
      adult.putPOJO("players", List.of(player));
      details.add(person("guardian-details", guardian, adult));
    }
    return details.stream();
  }

  private static Envelope person(String kind, UUID who, JsonNode details) {
    return event(
        "people", "org.tapeline.sizing." + kind + ".v1", kind + "-" + who, 1, who, details);
  }

  private static String address(UUID guardian) {
    return guardian + "@families.example.org";
  }

  private Envelope opened() {
    ObjectNode data = example(FITTING + "refit-opened.v1");
    data.put("refitCase", about.toString()).put("player", player.toString());
    return refit("refit-opened", 1, data);
  }

  private Envelope booked(long version, Instant starts) {
    ObjectNode data = example(FITTING + "refit-booked.v1");
    data.put("refitCase", about.toString()).put("player", player.toString());
    data.put("startsAt", starts.toString()).put("endsAt", starts.plusSeconds(1200).toString());
    return refit("refit-booked", version, data);
  }

  private Envelope refit(String name, long version, ObjectNode data) {
    return event("fitting.events", FITTING + name + ".v1", "refit-" + about, version, player, data);
  }

  private Envelope signOff(String name, long version) {
    ObjectNode data = example(FITTING + name + ".v1").put("player", player.toString());
    String stream = "signoff-" + player;
    return event("fitting.events", FITTING + name + ".v1", stream, version, player, data);
  }

  private static ObjectNode example(String type) {
    return CONTRACTS.exampleOf(type).deepCopy();
  }

  private static Envelope event(
      String topic, String type, String stream, long version, UUID key, JsonNode data) {
    UUID id = UUID.randomUUID();
    return new Envelope(topic, type, stream, version, key.toString(), id, id, id, data);
  }

  /** Words that each guardian is to read in one mail, no more and no fewer. */
  private List<String> once() {
    return switch (story) {
      case REFIT -> List.of("Do not wear this helmet", "September 15");
      case MOVED_REFIT -> List.of("Do not wear this helmet", "September 16");
      case LAPSE -> List.of("Do not wear it before a fit check");
    };
  }

  /** Whether both guardians have heard the first and the last of it. */
  boolean toldBy(CaughtMails mails) {
    return guardians.stream()
        .allMatch(
            guardian ->
                once().stream().noneMatch(said -> mails.of(address(guardian), said).isEmpty()));
  }

  /** Words that stand in more mails to one guardian than they should. */
  List<String> toldTwice(CaughtMails mails) {
    Stream<String> atMostOnce =
        Stream.of("The re-fit has a date", "The re-fit has moved", "September 15");
    return Stream.concat(once().stream(), atMostOnce)
        .distinct()
        .filter(said -> guardians.stream().anyMatch(g -> mails.of(address(g), said).size() > 1))
        .toList();
  }

  @Override
  public String toString() {
    return story + " " + about;
  }
}
