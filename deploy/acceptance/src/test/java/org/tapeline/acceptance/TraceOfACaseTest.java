package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.acceptance.TraceReceiver.Seen;

class TraceOfACaseTest {
  private static final String FITTER = "fitter.south";
  private static final String PLAYER = "LV-0075";

  @Test
  @DisplayName(
      "A failed fit check is one trace through all four services, to the mail that tells of it")
  void oneTrace() {
    TraceReceiver receiver = Tapeline.traces();
    UUID command = UUID.randomUUID();
    failsAFitCheck(command);

    String trace = command.toString().replace("-", "");
    Patience.soon()
        .untilAsserted(
            () ->
                assertThat(receiver.ofTrace(trace))
                    .extracting(Seen::service, Seen::name)
                    .contains(
                        tuple("fitting-service", "fail"),
                        tuple("fitting-service", "fit-failed"),
                        tuple("fitting-service", "publish fit-failed"),
                        tuple("sizing-service", "apply fit-failed"),
                        tuple("fitting-service", "refit-opened"),
                        tuple("inventory-service", "apply refit-opened"),
                        tuple("notify-service", "apply refit-opened"),
                        tuple("notify-service", "notice-raised"),
                        tuple("notify-service", "send by mail"),
                        tuple("notify-service", "notice-sent")));
    List<Seen> spans = receiver.ofTrace(trace);
    Seen first =
        spans.stream().filter(span -> span.name().equals("fail")).findFirst().orElseThrow();
    assertThat(first.parent()).isEmpty();
    assertThat(first.span()).isEqualTo(trace.substring(16));
    Seen failed = named(spans, "fit-failed");
    assertThat(failed.parent()).isEqualTo(first.span());
    assertThat(named(spans, "apply fit-failed").parent()).isEqualTo(failed.span());
    assertThat(named(spans, "send by mail").parent())
        .isEqualTo(named(spans, "notice-raised").span());

    Set<String> known = spans.stream().map(Seen::span).collect(Collectors.toSet());
    assertThat(spans).filteredOn(span -> !known.contains(span.parent())).containsOnly(first);
  }

  private static Seen named(List<Seen> spans, String name) {
    return spans.stream().filter(span -> span.name().equals(name)).findFirst().orElseThrow();
  }

  private static void failsAFitCheck(UUID command) {
    JsonNode session =
        Tapeline.does(FITTER, "/fitting/api/sessions", Map.of("player", PLAYER, "field", "SOUTH"));
    String at = "/fitting/api/sessions/" + session.path("session").asText();
    JsonNode helmet =
        Tapeline.get(FITTER, "/inventory/api/helmets?place=SOUTH&state=available").get(0);
    Tapeline.post(
        FITTER,
        at + "/helmet",
        Map.of("tag", helmet.path("tag").asText(), "sizeLabel", helmet.path("size").asText()));
    Tapeline.post(
        FITTER, at + "/checks", Map.of("check", "snug", "result", "fail", "finding", "loose"));
    Tapeline.post(FITTER, at + "/fail", Map.of(), command);
  }
}
