package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A season of the demo association in the stock room, step by step, over the programs' paths. */
class SeasonOfTheDemoTest {
  private static final String PLAYER = "LV-9051";
  private static final String LOT = "SEASON-1";
  private static final String SIZE = "youth-x-large";
  private static final String ROSTER =
      """
      player_number,given_name,family_name,birth_date,sex,team,field,\
      guardian_name,guardian_email,guardian_phone,guardian_language
      LV-9051,Nils,Quarrybank,2013-05-09,m,U10-HAWKS,NORTH,\
      Ada Quarrybank,ada.quarrybank@example.org,(303) 555-0198,en
      """;

  @Test
  @DisplayName(
      "Received, handed out, damaged, held, restocked, counted, reconditioned: the numbers agree")
  void season() {
    List<String> received = receive();
    String worn = restockWhatFitsNobodyHere();
    handOut(worn);
    damage(worn);
    inspect(worn);
    String second = bringWhatIsKept(worn);
    handOut(second);
    holdAndLift(second);
    bringWhatIsKept(second);
    does("depot", "/inventory/api/helmets/" + second + "/move", Map.of("place", "DEPOT"));
    count();
    recondition(received.stream().filter(SeasonOfTheDemoTest::onTheShelf).toList());
  }

  private List<String> receive() {
    String made = LocalDate.now().minusYears(1).withDayOfYear(100).toString();
    String until = LocalDate.now().plusYears(1).toString();
    String row = "\nmodel-a," + SIZE + "," + LOT + "," + made + "," + until + ",DEPOT";
    String csv = "model,size,lot,manufactured_on,certified_until,place" + row.repeat(6) + "\n";
    JsonNode answer = Tapeline.importing("manager", "/inventory/api/import/helmets", csv);
    assertThat(answer.path("accepted").asInt() + answer.path("unchanged").asInt()).isEqualTo(6);
    List<String> tags =
        list(Tapeline.get("depot", "/inventory/api/helmets?size=" + SIZE)).stream()
            .filter(h -> h.path("lot").asText().equals(LOT))
            .map(h -> h.path("tag").asText())
            .toList();
    assertThat(tags).hasSize(6);
    return tags;
  }

  /** 23 1/4 in is an extra large, of which only the depot has any: a transfer brings one. */
  private String restockWhatFitsNobodyHere() {
    Tapeline.importing("manager", "/sizing/api/import/players", ROSTER);
    does("fitter.north", "/sizing/api/players/" + PLAYER + "/readings", readings());
    String tooSmall =
        Tapeline.get("fitter.north", "/inventory/api/helmets?place=NORTH&state=available")
            .path(0)
            .path("tag")
            .asText();
    String session = openSession();
    String size = Tapeline.get("depot", "/inventory/api/helmets/" + tooSmall).path("size").asText();
    does(
        "fitter.north",
        "/fitting/api/sessions/" + session + "/helmet",
        Map.of("tag", tooSmall, "sizeLabel", size));
    does(
        "fitter.north",
        "/fitting/api/sessions/" + session + "/checks",
        Map.of("check", "snug", "result", "fail", "finding", "tight"));
    does(
        "fitter.north",
        "/fitting/api/sessions/" + session + "/fail",
        Map.of("needs", List.of(Map.of("kind", "helmet", "model", "model-a", "size", SIZE))));
    return bringWhatIsKept("");
  }

  /** The depot sends the helmet that is kept for the player, another than that. */
  private String bringWhatIsKept(String not) {
    JsonNode request = transfer(not);
    for (String step : List.of("pick", "ship", "receive")) {
      String path = "/inventory/api/restock/" + request.path("request").asText() + "/" + step;
      does("depot", path, Map.of());
    }
    String tag = request.path("tag").asText();
    assertThat(helmet(tag).path("place").asText()).isEqualTo("NORTH");
    return tag;
  }

  private static Map<String, List<String>> readings() {
    return Map.of("readings", List.of("23 1/4", "591 mm"));
  }

  private static JsonNode transfer(String not) {
    return Patience.soon()
        .until(
            () ->
                list(Tapeline.get("depot", "/inventory/api/restock")).stream()
                    .filter(r -> !r.path("tag").asText().equals(not))
                    .filter(r -> r.path("tag").asText().equals(kept()))
                    .findFirst(),
            Optional::isPresent)
        .orElseThrow();
  }

  /** The helmet that is kept for the player's re-fit; empty while there is none. */
  private static String kept() {
    return Tapeline.get("fitter.north", "/fitting/api/players/" + PLAYER)
        .at("/refit/needs/0/tag")
        .asText("none");
  }

  private void handOut(String tag) {
    String session = openSession();
    String path = "/fitting/api/sessions/" + session;
    does("fitter.north", path + "/helmet", Map.of("tag", tag, "sizeLabel", SIZE));
    for (JsonNode next = next(path); next.path("kind").asText().equals("look"); next = next(path)) {
      does(
          "fitter.north",
          path + "/checks",
          Map.of("check", next.path("check").asText(), "result", "pass"));
    }
    does("fitter.north", path + "/pass", Map.of("parts", List.of()));
    Patience.soon().untilAsserted(() -> assertThat(stateOf(tag)).isEqualTo("issued"));
    assertThat(playersState()).isEqualTo("may-wear");
  }

  private static JsonNode next(String session) {
    return Tapeline.get("fitter.north", session).path("next");
  }

  private void damage(String tag) {
    does(
        "fitter.north",
        "/inventory/api/helmets/" + tag + "/damage",
        Map.of("where", "shell", "what", "crack"));
    assertThat(stateOf(tag)).isEqualTo("quarantined");
    Patience.soon().untilAsserted(() -> assertThat(playersState()).isEqualTo("do-not-wear"));
  }

  private void inspect(String tag) {
    does(
        "depot",
        "/inventory/api/helmets/" + tag + "/inspection",
        Map.of("outcome", "retire", "findings", List.of("cracked")));
    assertThat(stateOf(tag)).isEqualTo("retired");
  }

  /**
   * A recall of that very helmet: nobody wears it until the hold is lifted, and then a fit decides.
   */
  private void holdAndLift(String tag) {
    Map<String, String> notice = Map.of("reason", "recall", "reference", "NOTICE-7", "tags", tag);
    String hold = does("manager", "/inventory/api/holds", notice).path("hold").asText();
    Patience.soon().untilAsserted(() -> assertThat(stateOf(tag)).isEqualTo("held"));
    Patience.soon().untilAsserted(() -> assertThat(playersState()).isEqualTo("do-not-wear"));
    does("fitter.north", "/inventory/api/holds/" + hold + "/put-aside", Map.of("tag", tag));
    does("manager", "/inventory/api/holds/" + hold + "/lift", Map.of("scope", "whole"));
    Patience.soon().untilAsserted(() -> assertThat(stateOf(tag)).isEqualTo("available"));
    assertThat(playersState()).isEqualTo("do-not-wear");
  }

  private void count() {
    JsonNode line = Tapeline.get("depot", "/inventory/api/stock?place=DEPOT").path(0);
    int book = line.path("pieces").asInt();
    Map<String, Object> counted =
        Map.of(
            "item",
            line.path("item").asText(),
            "model",
            line.path("model").asText(),
            "counted",
            book - 1,
            "book",
            book,
            "reason",
            "lost");
    does(
        "depot",
        "/inventory/api/stock/counts",
        Map.of("place", "DEPOT", "lines", List.of(counted)));
    JsonNode now = Tapeline.get("depot", "/inventory/api/stock?place=DEPOT").path(0);
    assertThat(now.path("pieces").asInt()).isEqualTo(book - 1);
    JsonNode books = Tapeline.get("manager", "/inventory/api/stock/check");
    assertThat(books.path("unbalanced")).isEmpty();
    assertThat(books.path("differences")).isEmpty();
  }

  private void recondition(List<String> tags) {
    assertThat(tags).hasSizeGreaterThanOrEqualTo(3);
    List<String> three = tags.subList(0, 3);
    String batches = "/inventory/api/reconditioning/batches";
    Map<String, Object> draft = Map.of("place", "DEPOT", "reconditioner", "recon-1", "tags", three);
    String batch = batches + "/" + does("depot", batches, draft).path("batch").asText();
    does("depot", batch + "/pack", Map.of("tags", three));
    does("depot", batch + "/send", Map.of());
    three.forEach(tag -> assertThat(stateOf(tag)).isEqualTo("at-reconditioner"));
    String until = LocalDate.now().plusYears(2).toString();
    does(
        "depot",
        batch + "/receive",
        Map.of(
            "outcome",
            "recertified",
            "certifiedUntil",
            until,
            "cost",
            "45",
            "tags",
            three.subList(0, 2)));
    does("depot", batch + "/receive", Map.of("outcome", "rejected", "cost", "10"));
    JsonNode closed = does("depot", batch + "/close", Map.of());
    assertThat(closed.path("costCents").asLong()).isEqualTo(2 * 4500 + 1000);
    assertThat(closed.path("state").asText()).isEqualTo("closed");
    assertThat(helmet(three.getFirst()).path("certifiedUntil").asText()).isEqualTo(until);
    assertThat(stateOf(three.getLast())).isEqualTo("retired");
  }

  private static String openSession() {
    return Patience.soon()
        .ignoreExceptions()
        .until(
            () ->
                does(
                        "fitter.north",
                        "/fitting/api/sessions",
                        Map.of("player", PLAYER, "field", "NORTH"))
                    .path("session")
                    .asText(),
            session -> !session.isEmpty());
  }

  private static String playersState() {
    return Tapeline.get("fitter.north", "/fitting/api/players/" + PLAYER)
        .at("/state/code")
        .asText();
  }

  private static JsonNode helmet(String tag) {
    return Tapeline.get("depot", "/inventory/api/helmets/" + tag);
  }

  /** In the depot, and not kept for the player whose helmet cracked. */
  private static boolean onTheShelf(String tag) {
    return stateOf(tag).equals("available") && helmet(tag).path("place").asText().equals("DEPOT");
  }

  private static String stateOf(String tag) {
    return helmet(tag).path("state").asText();
  }

  private static JsonNode does(String user, String path, Object body) {
    return Tapeline.does(user, path, body);
  }

  private static List<JsonNode> list(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).toList();
  }
}
