package org.tapeline.proof.fuzz;

import java.io.IOException;
import java.time.Duration;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.tapeline.proof.fuzz.record.Lag;
import org.tapeline.proof.fuzz.record.RecordFuzz;

/** What happens behind the endpoints: between the services, over Kafka. */
final class Behind {
  private static final Duration PATIENCE = Duration.ofSeconds(120);

  private final Target target;
  private final FuzzOptions options;
  private final Tally tally;
  private final Told told;
  private Map<String, Set<String>> parkedBefore = Map.of();

  Behind(Target target, FuzzOptions options, Tally tally, Told told) {
    this.target = target;
    this.options = options;
    this.tally = tally;
    this.told = told;
  }

  void remember() throws IOException {
    parkedBefore = Parked.at(target);
  }

  /** What one service accepted every other can read: nothing of it was parked. */
  void acceptedIsReadable() throws IOException {
    awaitLevel("after the endpoints");
    int parked = 0;
    for (Map.Entry<String, Set<String>> now : Parked.at(target).entrySet()) {
      Set<String> more = new HashSet<>(now.getValue());
      more.removeAll(parkedBefore.getOrDefault(now.getKey(), Set.of()));
      parked += more.size();
      for (String event : more) {
        tally.violated(
            new Tally.Violation(
                now.getKey(), "parked what a peer accepted", "an accepted command", event));
      }
    }
    told.line("events of accepted commands that a peer had to park %d", parked);
  }

  void brokenRecords() throws IOException {
    Map<String, Integer> before = counts();
    Map<String, Integer> sent =
        new RecordFuzz(bootstrap()).send(options.root(), options.seed(), options.share());
    awaitLevel("after broken records");
    Map<String, Integer> parked = counts();
    parked.replaceAll((service, count) -> count - before.get(service));
    told.line("broken records by topic %s, parked by service %s", sent, parked);
    if (parked.values().stream().allMatch(count -> count == 0)) {
      tally.violated(
          new Tally.Violation("Kafka", "no broken record was parked", "broken records", ""));
    }
  }

  void goodEventsFlow() throws IOException, InterruptedException {
    new GoodEvents(target, PATIENCE)
        .stuck()
        .ifPresentOrElse(
            stuck ->
                tally.violated(
                    new Tally.Violation("Kafka", stuck, "good events after broken records", "")),
            () -> told.line("good events after all that reached every service"));
  }

  private Map<String, Integer> counts() throws IOException {
    Map<String, Integer> counts = new TreeMap<>();
    Parked.at(target).forEach((service, events) -> counts.put(service, events.size()));
    return counts;
  }

  private void awaitLevel(String when) {
    Map<String, Long> behind = new Lag(bootstrap()).untilNone(PATIENCE);
    behind.forEach(
        (group, records) ->
            tally.violated(
                new Tally.Violation(group, "stopped reading", when, records + " records behind")));
    told.line("%s: consumers that are behind %d", when, behind.size());
  }

  private String bootstrap() {
    return "127.0.0.1:" + target.ports().kafka();
  }
}
