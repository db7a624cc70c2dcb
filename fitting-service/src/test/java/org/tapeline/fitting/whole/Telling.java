package org.tapeline.fitting.whole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import org.tapeline.testkit.TestKafka.Envelope;

/**
 * One way of hearing a story: in the order in which it happened, or interleaved, repeated and
 * delayed. What inventory answers to a re-fit case joins what is still to be heard.
 */
final class Telling {
  /** Of ten chances, those with which an earlier event comes again beside the next one. */
  private static final int REPEATS = 3;

  final long seed;
  final GeneratedStory story;
  private final Optional<Random> mixed;
  private final List<Act> left;
  private final Set<Integer> heard = new HashSet<>();
  private final List<Envelope> sent = new ArrayList<>();
  private final Map<String, Integer> lateness = new HashMap<>();
  private int next;

  /**
   * @param mixed empty for the order in which it happened
   */
  Telling(long seed, GeneratedStory story, Optional<Random> mixed) {
    this.seed = seed;
    this.story = story;
    this.mixed = mixed;
    this.left = new ArrayList<>(story.acts());
    this.next = left.size();
  }

  boolean over() {
    return left.isEmpty();
  }

  boolean isAbout(UUID player) {
    return story.players.stream().anyMatch(p -> p.player().equals(player));
  }

  /** An answer of a peer, in the stream of its case. */
  void answer(String stream, Envelope answer) {
    Set<Integer> after = new HashSet<>();
    left.stream().filter(a -> a.stream().equals(stream)).forEach(a -> after.add(a.number()));
    left.add(new Act(next++, after, stream, Optional.of(answer), () -> {}));
  }

  /** What is heard now; nothing for a deed of fitting itself, which is done. */
  List<Envelope> step() {
    List<Act> ready = left.stream().filter(a -> heard.containsAll(a.after())).toList();
    Act act = ready.stream().min(order()).orElseThrow();
    left.remove(act);
    heard.add(act.number());
    act.done().run();
    List<Envelope> now = new ArrayList<>(act.said().stream().toList());
    sent.addAll(now);
    mixed
        .filter(random -> !sent.isEmpty() && random.nextInt(10) < REPEATS)
        .ifPresent(random -> now.add(sent.get(random.nextInt(sent.size()))));
    return now;
  }

  /**
   * As it happened: answers of peers at once. Mixed: each stream is late by its own measure, so
   * that one may be heard when all others are over.
   */
  private Comparator<Act> order() {
    if (mixed.isEmpty()) {
      return Comparator.<Act, Boolean>comparing(a -> a.number() < story.acts().size())
          .thenComparing(Act::number);
    }
    Random random = mixed.get();
    Map<Act, Integer> drawn = new HashMap<>();
    for (Act act : left) {
      int late = lateness.computeIfAbsent(act.stream(), s -> random.nextInt(100));
      drawn.put(act, late + random.nextInt(60));
    }
    return Comparator.comparing(drawn::get);
  }
}
