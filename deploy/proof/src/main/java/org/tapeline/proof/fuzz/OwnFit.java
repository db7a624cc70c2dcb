package org.tapeline.proof.fuzz;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;

/**
 * A player of a model, a helmet and a fit of its own: all that was there before may have been put
 * out of play by what was tried.
 */
final class OwnFit {
  private static final String FIELD = "NORTH";
  private static final Duration AGAIN = Duration.ofMillis(500);

  private final Target target;
  private final Duration patience;
  private final String number =
      "FZ-" + Long.toString(System.nanoTime(), 36).toUpperCase(Locale.ROOT);

  OwnFit(Target target, Duration patience) {
    this.target = target;
    this.patience = patience;
  }

  /**
   * From enrolment to sign-off.
   *
   * @return the tag of the helmet that the player wears then
   * @throws IOException with what was refused or never came
   */
  String signedOff() throws IOException, InterruptedException {
    String player = enrolled();
    String tag = received();
    Map<String, Object> open = Map.of("player", player, "field", FIELD);
    String session = command("/fitting/api/sessions", open).path("session").asText();
    String path = "/fitting/api/sessions/" + session;
    command(path + "/helmet", Map.of("tag", tag, "sizeLabel", "youth-medium"));
    for (JsonNode check : target.get("/fitting/api/protocol").path("checks")) {
      command(path + "/checks", Map.of("check", check.path("id").asText(), "result", "pass"));
    }
    command(path + "/pass", Map.of("airCelsius", 20, "hair", "usual"));
    return tag;
  }

  private String enrolled() throws IOException {
    String csv =
        "player_number,given_name,family_name,birth_date,sex,team,field,guardian_name,"
            + "guardian_email,guardian_phone,guardian_language,guardian2_name,guardian2_email,"
            + "guardian2_phone,guardian2_language\n"
            + number
            + ",Wren,Afterwards,2015-03-01,f,U12-HERONS,"
            + FIELD
            + ",Robin Afterwards,afterwards@example.org,,en,,,,\n";
    target.post("/sizing/api/import/players", "text/csv", csv);
    return target.get("/sizing/api/players/" + number).path("player").asText();
  }

  private String received() throws IOException, InterruptedException {
    String model = number.toLowerCase(Locale.ROOT);
    String chart = "model,size,from,to,unit\n" + model + ",youth-medium,521,552,mm\n";
    target.post("/sizing/api/import/charts", "text/csv", chart);
    String helmet =
        "tag,model,size,lot,manufactured_on,certified_until,place\n,%s,youth-medium,%s,%s,%s,%s%n"
            .formatted(
                model, number, LocalDate.now().minusYears(1), LocalDate.now().plusYears(1), FIELD);
    target.post("/inventory/api/import/helmets", "text/csv", helmet);
    return target.get("/inventory/api/helmets?model=" + model).path(0).path("tag").asText();
  }

  /** What the other services say is news to fitting for a moment. */
  private JsonNode command(String path, Map<String, Object> body)
      throws IOException, InterruptedException {
    Instant until = Instant.now().plus(patience);
    while (true) {
      try {
        return target.command(path, body);
      } catch (IOException e) {
        if (Instant.now().isAfter(until)) {
          throw e;
        }
        Thread.sleep(AGAIN);
      }
    }
  }
}
