package org.tapeline.fitting.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.session.SessionOutcome;
import org.tapeline.fitting.signoff.Sideline;
import org.tapeline.journal.Freshness;
import org.tapeline.journal.Journal;
import org.tapeline.journal.Transactions;
import org.tapeline.testkit.TestKafka.Envelope;
import org.tapeline.testkit.TestServers;

/**
 * Many stories at once, each with its own players and helmets, through the consumer as it runs. All
 * go on by one event, then the next: within a story each event is applied before the next is sent,
 * so that the order across topics is the one that is meant.
 *
 * <p>What a fitter does is done on what is known at that moment, so it has a place: after the news
 * of that player and that helmet on which it rests, and before later news of these two. Where such
 * news is on its way while the fitter works, the session is refused or its sign-off is taken back
 * as soon as it comes: both are safe and both are true, but they are two histories.
 */
@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("Generated stories, in whichever order their events are heard,")
class AnyOrderPropertyTest {
  private static final int STORIES = 60;
  private static final int MIXED_EACH = 4;

  @ConfigProperty(name = "kafka.bootstrap.servers")
  String kafka;

  @Inject Transactions transactions;
  @Inject SessionOutcome outcome;
  @Inject Sideline sideline;
  @Inject Journal journal;
  @Inject Freshness freshness;

  @Test
  @DisplayName("with repeats and delays, end in one state each")
  void oneState() {
    try (Peers peers = new Peers(kafka)) {
      Delivery delivery = new Delivery(peers, transactions);
      delivery.inOrder(
          peers.field(GeneratedStory.HOME), peers.field(GeneratedStory.AWAY), peers.chart());
      fitDays();
      List<Telling> tellings = tellings(peers);
      List<Telling> running = new ArrayList<>(tellings);
      AnsweringInventory inventory = new AnsweringInventory(peers, journal);
      while (!running.isEmpty()) {
        List<Envelope> round = new ArrayList<>();
        running.forEach(telling -> round.addAll(telling.step()));
        delivery.allOf(round);
        inventory.answer(tellings);
        running = tellings.stream().filter(t -> !t.over()).toList();
      }
      await().atMost(Fitter.PATIENCE).until(() -> sideline.asOf().isPresent());
      compare(tellings);
    }
    assertThat(Fitter.as("manager").get("/api/parked").jsonPath().getList("")).isEmpty();
  }

  private static void fitDays() {
    for (String field : List.of(GeneratedStory.HOME, GeneratedStory.AWAY)) {
      String day = LocalDate.now().plusDays(3).toString();
      new Fitter("manager", field).announces(day, "08:00", "20:00", 20);
    }
  }

  private List<Telling> tellings(Peers peers) {
    Ends ends = new Ends(outcome, transactions);
    List<Telling> all = new ArrayList<>();
    for (long seed = 1; seed <= STORIES; seed++) {
      all.add(new Telling(seed, new GeneratedStory(seed, peers, ends), Optional.empty()));
      for (int i = 1; i <= MIXED_EACH; i++) {
        Random random = new Random(seed * 1_000 + i);
        all.add(new Telling(seed, new GeneratedStory(seed, peers, ends), Optional.of(random)));
      }
    }
    return all;
  }

  private void compare(List<Telling> tellings) {
    EndState endState = new EndState(transactions, sideline);
    Map<Long, String> asItHappened = new HashMap<>();
    Set<String> seen = new HashSet<>();
    List<String> others = new ArrayList<>();
    for (Telling telling : tellings) {
      String end = endState.of(telling.story);
      seen.add(end);
      String wanted = asItHappened.computeIfAbsent(telling.seed, seed -> end);
      if (!wanted.equals(end)) {
        others.add("story " + telling.seed + "\n" + wanted + "\nbut\n" + end);
      }
    }
    System.out.println(
        tellings.size() + " sequences of " + STORIES + " stories, " + seen.size() + " end states");
    assertThat(others).as("%d of %d", others.size(), tellings.size()).isEmpty();
  }
}
