package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.testkit.TestKafka;
import org.tapeline.testkit.TestKafka.Envelope;

/** On a stack of its own, without data: the causes are published as the peers would. */
@DisplayName("Notices, while causes come three times in any order and their service is killed")
class NoticesOnceTest {
  private static final String RUN = "notices";
  private static final int TIMES = 3;
  private static final int KILLS = 3;

  /** Said with a failure, so that the very order can be tried again. */
  private final long seed = System.nanoTime();

  @Test
  @DisplayName("tell each person of each cause exactly once")
  void once() throws IOException {
    List<ToldFamily> families = ToldFamily.some(12);
    List<Envelope> asked = ToldDepot.requests(6);
    List<Envelope> deliveries = new ArrayList<>();
    for (int i = 0; i < TIMES; i++) {
      families.forEach(family -> deliveries.addAll(family.causes()));
      deliveries.addAll(asked);
    }
    Collections.shuffle(deliveries, new Random(seed));
    try (LocalRun run = LocalRun.start(RUN, Map.of(), "--fresh", "--empty");
        TestKafka kafka = new TestKafka("127.0.0.1:" + (port(run) + 7001))) {
      kafka.publishAll(families.stream().flatMap(ToldFamily::people).toList());
      deliver(run, kafka, deliveries);
      CaughtMails mails = new CaughtMails(LocalRun.data(RUN).resolve("mail"));
      Patience.soon()
          .atMost(Duration.ofMinutes(2))
          .untilAsserted(() -> assertThat(untold(mails, families, asked)).as("not told").isEmpty());
      // One more, after all others: when it has gone out, whatever would still come has come.
      ToldFamily last = ToldFamily.some(1).getFirst();
      kafka.publishAll(last.people().toList()).publishAll(last.causes());
      Patience.soon().until(() -> last.toldBy(mails));
      assertThat(families)
          .allSatisfy(family -> assertThat(family.toldTwice(mails)).as("seed " + seed).isEmpty());
      assertThat(asked)
          .allSatisfy(
              request ->
                  assertThat(mails.of("depot@larkfield.example.org", ToldDepot.says(request)))
                      .as("seed " + seed)
                      .hasSize(1));
    }
  }

  /** In equal parts, and while each is worked on the service is killed. */
  private static void deliver(LocalRun run, TestKafka kafka, List<Envelope> deliveries) {
    int part = deliveries.size() / (KILLS + 1) + 1;
    for (int from = 0; from < deliveries.size(); from += part) {
      kafka.publishAll(deliveries.subList(from, Math.min(from + part, deliveries.size())));
      if (from + part < deliveries.size()) {
        KilledService.of("notify", RUN).startAgain();
        Patience.soon().atMost(Duration.ofMinutes(2)).until(() -> run.ready("notify"));
      }
    }
  }

  private static List<String> untold(
      CaughtMails mails, List<ToldFamily> families, List<Envelope> asked) {
    return Stream.concat(
            families.stream().filter(family -> !family.toldBy(mails)).map(ToldFamily::toString),
            asked.stream()
                .map(ToldDepot::says)
                .filter(said -> mails.of("depot@larkfield.example.org", said).isEmpty()))
        .toList();
  }

  private static int port(LocalRun run) {
    return URI.create(run.address()).getPort();
  }
}
