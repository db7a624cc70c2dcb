package org.tapeline.fitting.whole;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tapeline.testkit.TestKafka.Envelope;

/** The acts of a story as they happen, each after what it follows from. */
final class Acts {
  private final List<Act> all = new ArrayList<>();
  private final Map<String, Integer> last = new HashMap<>();

  List<Act> all() {
    return List.copyOf(all);
  }

  int count() {
    return all.size();
  }

  void say(String stream, Envelope news) {
    add(stream, Set.of(stream), Optional.of(news), () -> {});
  }

  /** Somebody at the field sees the player on the roster and the helmet as it is. */
  void deed(Person p, String tag, Runnable done) {
    add("fitting", Set.of("sizing-" + p.player(), "helmet-" + tag), Optional.empty(), done);
  }

  private void add(String stream, Set<String> touched, Optional<Envelope> said, Runnable done) {
    Set<Integer> after = new HashSet<>();
    touched.forEach(t -> Optional.ofNullable(last.get(t)).ifPresent(after::add));
    int number = all.size();
    all.add(new Act(number, after, stream, said, done));
    touched.forEach(t -> last.put(t, number));
  }
}
