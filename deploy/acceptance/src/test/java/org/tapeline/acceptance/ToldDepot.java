package org.tapeline.acceptance;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.tapeline.testkit.EventContracts;
import org.tapeline.testkit.TestKafka.Envelope;

/** Requests for parts of which a depot is to hear, each for a part of its own. */
final class ToldDepot {
  private static final EventContracts CONTRACTS = EventContracts.load();
  private static final String ASKED = "org.tapeline.inventory.restock-requested.v1";

  private ToldDepot() {}

  static List<Envelope> requests(int count) {
    return IntStream.range(0, count).mapToObj(ToldDepot::request).toList();
  }

  private static Envelope request(int number) {
    UUID request = UUID.randomUUID();
    ObjectNode data = CONTRACTS.exampleOf(ASKED).deepCopy();
    data.remove(List.of("model", "size"));
    data.put("request", request.toString()).put("item", "jaw-pad-" + (70 + number) + "mm");
    data.put("quantity", 100 + number);
    return new Envelope(
        "inventory.events",
        ASKED,
        "restock-" + request,
        1,
        request.toString(),
        UUID.randomUUID(),
        request,
        request,
        data);
  }

  /** The words by which a mail about it is known. */
  static String says(Envelope request) {
    return request.data().path("quantity").asText();
  }
}
