package org.tapeline.fitting.whole;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.tapeline.journal.UuidV7;
import org.tapeline.testkit.TestKafka.Envelope;

/**
 * Two players and three helmets, and what happens to them, as a seed has it. The acts stand in the
 * order in which they happened; each knows what it cannot be heard before. One seed tells one
 * story, with other players and helmets each time.
 */
final class GeneratedStory {
  static final String HOME = "ORDER-HOME";
  static final String AWAY = "ORDER-AWAY";
  private static final int ACTS = 18;

  final List<Person> players;
  final List<String> helmets;
  private final Acts acts = new Acts();
  private final Map<UUID, Boolean> plays = new HashMap<>();
  private final Map<String, String> state = new HashMap<>();
  private final Map<String, Person> holder = new HashMap<>();
  private final Map<UUID, String> has = new HashMap<>();
  private final Set<String> lost = new HashSet<>();
  private final Random random;
  private final Peers peers;
  private final Ends ends;

  GeneratedStory(long seed, Peers peers, Ends ends) {
    this.random = new Random(seed);
    this.peers = peers;
    this.ends = ends;
    this.players = List.of(Person.next(), Person.next());
    this.helmets =
        List.of(
            players.getFirst().tag() + "A",
            players.getFirst().tag() + "B",
            players.getLast().tag());
    players.forEach(this::enrolled);
    for (int i = 0; i < helmets.size(); i++) {
      received(helmets.get(i), i == 2 ? "youth-large" : "youth-medium");
    }
    while (acts.count() < ACTS) {
      one();
    }
  }

  List<Act> acts() {
    return acts.all();
  }

  private void one() {
    Person player = players.get(random.nextInt(players.size()));
    String tag = helmets.get(random.nextInt(helmets.size()));
    switch (random.nextInt(12)) {
      case 0 -> named(player);
      case 1 -> advised(player);
      case 2 -> moved(player);
      case 3 -> comesOrGoes(player);
      case 4, 5, 6 -> fitted(player, tag);
      case 7 -> failed(player, tag);
      case 8 -> brought(tag);
      case 9 -> restocked(tag);
      default -> helmetNews(tag);
    }
  }

  private void enrolled(Person p) {
    plays.put(p.player(), true);
    acts.say("sizing-" + p.player(), peers.enrolled(p.player(), p.number(), p.team(), HOME));
  }

  private void named(Person p) {
    String name = random.nextBoolean() ? "Amber" : "Birch";
    acts.say("people-" + p.player(), peers.details(p.player(), p.number(), p.team(), HOME, name));
  }

  private void advised(Person p) {
    String size = random.nextBoolean() ? "youth-medium" : "youth-small";
    acts.say("sizing-" + p.player(), peers.advised(p.player(), size));
  }

  private void moved(Person p) {
    if (plays.get(p.player())) {
      String field = random.nextBoolean() ? HOME : AWAY;
      acts.say("sizing-" + p.player(), peers.moved(p.player(), p.team(), field));
    }
  }

  private void comesOrGoes(Person p) {
    if (plays.get(p.player())) {
      plays.put(p.player(), false);
      acts.say("sizing-" + p.player(), peers.left(p.player()));
    } else {
      enrolled(p);
    }
  }

  private void received(String tag, String size) {
    state.put(tag, "available");
    acts.say("helmet-" + tag, peers.received(tag, HOME, size));
  }

  /** A pass, and what inventory makes of it: the helmet is issued or, now and then, refused. */
  private void fitted(Person p, String tag) {
    boolean free = state.get(tag).equals("available") || p.equals(holder.get(tag));
    if (!plays.get(p.player()) || !free || lost.contains(tag)) {
      return;
    }
    UUID session = UuidV7.next();
    acts.deed(p, tag, () -> ends.passed(p, tag, session));
    if (random.nextInt(6) == 0) {
      acts.say("helmet-" + tag, peers.refused(tag, p.player(), session));
      return;
    }
    Optional.ofNullable(has.put(p.player(), tag))
        .filter(old -> !old.equals(tag))
        .ifPresent(this::backFrom);
    if (!p.equals(holder.get(tag))) {
      state.put(tag, "issued");
      holder.put(tag, p);
      acts.say("helmet-" + tag, peers.issued(tag, p.player(), session));
    }
  }

  /** The former helmet stays with the player by the records, or is handed back. */
  private void backFrom(String former) {
    if (random.nextBoolean() && "issued".equals(state.get(former))) {
      Person p = holder.remove(former);
      state.put(former, "available");
      acts.say("helmet-" + former, peers.returned(former, p.player(), HOME));
    }
  }

  private void failed(Person p, String tag) {
    boolean free = state.get(tag).equals("available") || p.equals(holder.get(tag));
    if (plays.get(p.player()) && free) {
      boolean part = random.nextBoolean();
      acts.deed(p, tag, () -> ends.failed(p, tag, part));
    }
  }

  private void brought(String tag) {
    if (state.get(tag).equals("available")) {
      String to = random.nextBoolean() ? HOME : AWAY;
      acts.say("helmet-" + tag, peers.brought(tag, to));
    }
  }

  /** Concerns fitting as little as the parts that are used up. */
  private void restocked(String tag) {
    for (String news : List.of("restock-requested", "restock-picked", "part-used")) {
      String stream = "restock-" + tag;
      acts.say(stream, peers.example(news, stream));
    }
  }

  private void helmetNews(String tag) {
    Person p = holder.get(tag);
    switch (state.get(tag)) {
      case "available", "issued" -> {
        if (random.nextInt(3) == 0) {
          gone(tag, "retired", peers.retired(tag));
        } else {
          gone(tag, "quarantined", peers.quarantined(tag, p == null ? null : p.player()));
        }
      }
      case "quarantined" -> {
        state.put(tag, "available");
        acts.say("helmet-" + tag, peers.inspected(tag));
      }
      default -> named(players.getFirst());
    }
  }

  private void gone(String tag, String how, Envelope news) {
    state.put(tag, how);
    Person p = holder.remove(tag);
    if (p != null) {
      has.remove(p.player(), tag);
    }
    if (how.equals("retired")) {
      lost.add(tag);
    }
    acts.say("helmet-" + tag, news);
  }
}
