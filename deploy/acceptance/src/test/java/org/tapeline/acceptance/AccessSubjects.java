package org.tapeline.acceptance;

import com.fasterxml.jackson.databind.JsonNode;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import javax.imageio.ImageIO;

/**
 * One thing of each kind at a field and of a team of the demo: the values that the rows of the
 * matrix are tried with. What the demo has none of is made, and ended again.
 */
final class AccessSubjects implements AutoCloseable {
  private static final String MANAGER = "manager";
  private static final Pattern SHEET = Pattern.compile("/fitting/sign-offs/([0-9a-f-]{36})/");
  private static final String HELMETS = "/inventory/api/player-helmets?player=";
  private static final byte[] SCRATCH =
      "{\"where\":\"shell\",\"what\":\"scratch\"}".getBytes(StandardCharsets.UTF_8);

  /** Nothing is found under it: for what is nobody's own, the guard alone is tried. */
  private static final String NOTHING = "0199c8f0-0000-7000-8000-000000000001";

  private final String field;
  private final String fitter;
  private final String team;
  private final List<JsonNode> players;
  private final Map<String, String> values = new HashMap<>();

  private AccessSubjects(String field, String team, String fitter) {
    this.fitter = fitter;
    this.field = field;
    this.team = team;
    this.players =
        list(Tapeline.get(MANAGER, "/sizing/api/players?field=" + field + "&team=" + team));
  }

  /**
   * @param field at which there are an available helmet, a fit day and an open re-fit case
   * @param team of that field, with somebody signed off and a family that was written to
   * @param fitter of that field alone, of the two
   */
  static AccessSubjects at(String field, String team, String fitter) {
    AccessSubjects subjects = new AccessSubjects(field, team, fitter);
    subjects.gather();
    return subjects;
  }

  /**
   * The values for a row about such a thing: one of {@code player}, {@code session} and so on, or
   * another player or session than the usual.
   */
  Map<String, String> values(String about) {
    Map<String, String> chosen = new HashMap<>(values);
    switch (about) {
      case "measured" -> chosen.put("player", values.get("measured"));
      case "signed-off" -> chosen.put("player", values.get("signedOff"));
      case "sign-off" -> chosen.put("session", values.get("signOff"));
      default -> {}
    }
    return chosen;
  }

  private void gather() {
    for (String name :
        List.of("plan", "batch", "hold", "request", "receiving", "id", "correlationId")) {
      values.put(name, NOTHING);
    }
    values.putAll(Map.of("model", "model-a", "check", "snug", "item", "valve", "stream", "none"));
    values.put("token", "AQnot-a-token-of-ours");
    values.put("field", field);
    values.put("team", team);
    JsonNode player = players.getLast();
    values.put("player", player.path("player").asText());
    JsonNode measured =
        players.stream().filter(p -> p.path("head").has("version")).findFirst().orElseThrow();
    values.put("measured", measured.path("player").asText());
    values.put("version", measured.at("/head/version").asText());
    values.put("session", openSession(player));
    signedOff();
    values.put("fitDay", first("/fitting/api/fit-days", "fitDay"));
    values.put("refitCase", first("/fitting/api/refits", "refitCase"));
    damage();
    notice();
  }

  private String openSession(JsonNode player) {
    Map<String, Object> body = Map.of("player", player.path("player").asText(), "field", field);
    return Tapeline.does(MANAGER, "/fitting/api/sessions", body).path("session").asText();
  }

  /** Somebody with a helmet, and the session in which that helmet was signed off. */
  private void signedOff() {
    for (JsonNode each : players) {
      String id = each.path("player").asText();
      Matcher sheet = SHEET.matcher(Raw.page(MANAGER, "/fitting/players/" + id));
      if (sheet.find() && !Tapeline.get(MANAGER, HELMETS + id).isEmpty()) {
        values.put("signedOff", id);
        values.put("signOff", sheet.group(1));
        return;
      }
    }
    throw new IllegalStateException("Nobody of " + team + " has a helmet");
  }

  private String first(String path, String id) {
    return list(Tapeline.get(MANAGER, path)).stream()
        .filter(each -> each.path("field").asText().equals(field))
        .map(each -> each.path(id).asText())
        .findFirst()
        .orElseThrow(() -> new IllegalStateException("None at " + field + ": " + path));
  }

  /** A scratch: it is noted and leads to nothing. */
  private void damage() {
    String free = "/inventory/api/helmets?state=available&place=" + field;
    String tag = Tapeline.get(MANAGER, free).path(0).path("tag").asText();
    String path = "/inventory/api/helmets/" + tag + "/damage";
    UUID report = Raw.done(MANAGER, path, "application/json", SCRATCH);
    Raw.done(MANAGER, path + "/" + report + "/photo", "image/png", photo());
    values.put("tag", tag);
    values.put("report", report.toString());
  }

  private static byte[] photo() {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      ImageIO.write(new BufferedImage(64, 64, BufferedImage.TYPE_INT_RGB), "png", out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A notice to a family of the field alone, who then asks for a call. */
  private void notice() {
    Set<String> ids = new HashSet<>();
    players.stream()
        // Other tests' players came later: where their families' mails are is not known here.
        .filter(p -> DemoRoster.guardianOf(p.path("number").asText()).isPresent())
        .forEach(p -> ids.add(p.path("player").asText()));
    JsonNode notice =
        list(Tapeline.get(MANAGER, "/notify/api/notices").path("notices")).stream()
            .filter(n -> !n.path("players").isEmpty())
            .filter(n -> list(n.path("players")).stream().allMatch(p -> ids.contains(p.asText())))
            .filter(n -> n.path("recipient").asText().matches("[0-9a-f-]{36}"))
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("No family was told at " + field));
    values.put("notice", notice.path("notice").asText());
    values.put("guardian", notice.path("recipient").asText());
    values.put("help", call(list(notice.path("players")).getFirst().asText()));
  }

  /** The family asks for a call by the link of its mail; the id of the call. */
  private String call(String player) {
    String family =
        players.stream()
            .filter(p -> p.path("player").asText().equals(player))
            .flatMap(p -> DemoRoster.guardianOf(p.path("number").asText()).stream())
            .findFirst()
            .orElseThrow();
    MailedLinks.ofTheNewestTo(family).askForACall();
    Pattern call = Pattern.compile("/notify/calls/([0-9a-f-]{36})");
    return Patience.soon()
        .until(() -> call.matcher(Raw.page(fitter, "/notify/calls")), Matcher::find)
        .group(1);
  }

  /** Ends what was made. */
  @Override
  public void close() {
    Optional.ofNullable(values.get("session"))
        .ifPresent(
            session ->
                Tapeline.post(
                    MANAGER,
                    "/fitting/api/sessions/" + session + "/abandon",
                    Map.of("why", "player-left")));
  }

  private static List<JsonNode> list(JsonNode array) {
    return StreamSupport.stream(array.spliterator(), false).toList();
  }
}
