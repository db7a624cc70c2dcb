package org.tapeline.proof.upgrade;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Players who are fitted, each in a helmet of their own. */
final class Fits {
  private static final String PLACES =
      "code,name,kind,altitude_m,time_zone\nNORTH,North Meadow,field,1620,America/Denver\n";
  private static final String PLAYER =
      "%s,Ada,Quillfeather,2015-04-30,f,U10-HAWKS,NORTH,Bea Quillfeather,%s@example.org,,en,,,,%n";
  private static final String PLAYERS =
      "player_number,given_name,family_name,birth_date,sex,team,field,guardian_name,"
          + "guardian_email,guardian_phone,guardian_language,guardian2_name,guardian2_email,"
          + "guardian2_phone,guardian2_language\n";
  private static final String HELMETS =
      "tag,model,size,lot,manufactured_on,certified_until,place\n";
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  private final Copies copies;
  private final Databases databases;

  Fits(Copies copies, Databases databases) {
    this.copies = copies;
    this.databases = databases;
  }

  /**
   * @param step 1 and 2 with two copies, 3 with one
   */
  void run(int step, int players) throws IOException, SQLException, InterruptedException {
    copies.await(step < 3);
    imports(step, players);
    List<String> ids =
        databases.texts("sizing", "select player from player where number like 'U" + step + "-%'");
    List<String> tags =
        databases.texts("inventory", "select tag from helmet where lot = 'STEP-" + step + "'");
    List<String> checks = new ArrayList<>();
    copies.protocol().get("checks").forEach(check -> checks.add(check.get("id").asText()));
    for (int i = 0; i < players; i++) {
      fit(ids.get(i), tags.get(i), checks);
    }
  }

  private void imports(int step, int players) throws IOException, InterruptedException {
    StringBuilder roster = new StringBuilder(PLAYERS);
    for (int i = 1; i <= players; i++) {
      String number = "U%d-%04d".formatted(step, i);
      roster.append(PLAYER.formatted(number, number.toLowerCase(Locale.ROOT)));
    }
    String helmet = ",model-a,youth-medium,STEP-" + step + ",2025-01-01,,NORTH\n";
    copies.imports("/inventory/api/import/places", PLACES);
    copies.imports("/sizing/api/import/players", roster.toString());
    copies.imports("/inventory/api/import/helmets", HELMETS + helmet.repeat(players));
  }

  /** Player and helmet are news to fitting for a moment. */
  private void fit(String player, String tag, List<String> checks)
      throws IOException, InterruptedException {
    JsonNode opened = untilKnown("/api/sessions", Map.of("player", player, "field", "NORTH"));
    String session = "/api/sessions/" + opened.get("session").asText();
    untilKnown(session + "/helmet", Map.of("tag", tag, "sizeLabel", "youth-medium"));
    for (String check : checks) {
      copies.command(session + "/checks", Map.of("check", check, "result", "pass"));
    }
    copies.command(session + "/pass", Map.of("airCelsius", 24, "hair", "usual"));
  }

  private JsonNode untilKnown(String path, Map<String, Object> body)
      throws IOException, InterruptedException {
    Instant until = Instant.now().plus(PATIENCE);
    while (true) {
      try {
        return copies.command(path, body);
      } catch (Copies.Refused e) {
        if (Instant.now().isAfter(until)) {
          throw e;
        }
        Thread.sleep(250);
      }
    }
  }
}
