package org.tapeline.acceptance;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicReference;

/** A new player of the field NORTH is measured, tries a helmet, and it does not fit. */
final class FailedFit {
  private static final String FITTER = "fitter.north";

  private FailedFit() {}

  /**
   * @param player number in the roster; the import may not have come to all services yet
   */
  static void of(String player) {
    Patience.soon()
        .ignoreExceptions()
        .untilAsserted(
            () ->
                Tapeline.post(
                    FITTER,
                    "/sizing/api/players/" + player + "/readings",
                    Map.of("readings", List.of("21 in", "534 mm"))));
    AtomicReference<String> session = new AtomicReference<>();
    Patience.soon()
        .ignoreExceptions()
        .untilAsserted(
            () ->
                session.set(
                    Tapeline.does(
                            FITTER,
                            "/fitting/api/sessions",
                            Map.of("player", player, "field", "NORTH"))
                        .path("session")
                        .asText()));
    JsonNode free = Tapeline.get(FITTER, "/inventory/api/helmets?place=NORTH&state=available");
    JsonNode helmet = free.get(free.size() - 1);
    String path = "/fitting/api/sessions/" + session.get();
    Tapeline.post(
        FITTER,
        path + "/helmet",
        Map.of("tag", helmet.path("tag").asText(), "sizeLabel", helmet.path("size").asText()));
    Tapeline.post(
        FITTER, path + "/checks", Map.of("check", "snug", "result", "fail", "finding", "loose"));
    Tapeline.post(FITTER, path + "/fail", Map.of());
  }
}
