package org.tapeline.fitting.fieldapp;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.roster.Words;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.quarkus.http.Answers;

/** What phones could not get recorded, for whoever sees to it. */
@Path("/set-aside")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class SetAsidePage {
  private final SetAsideDesk desk;
  private final Protocols protocols;

  SetAsidePage(SetAsideDesk desk, Protocols protocols) {
    this.desk = desk;
    this.protocols = protocols;
  }

  @CheckedTemplate(basePath = "fieldapp")
  static class Templates {
    private Templates() {}

    static native TemplateInstance setaside(List<Shown> asides);

    static native TemplateInstance ofplayer(List<Shown> asides);
  }

  /** One of them in words. */
  public record Shown(
      UUID id,
      UUID player,
      String name,
      String fitter,
      String when,
      String sentence,
      List<Line> entries) {}

  /** An entry in words; the one that was refused is marked. */
  public record Line(String at, String said, boolean refused) {}

  @GET
  @Transactional
  public String list() {
    return Templates.setaside(desk.unseen().stream().map(this::shown).toList()).render();
  }

  /** Those of one player, to stand on the player's page. */
  @GET
  @Path("/of/{player}")
  @Transactional
  public String ofPlayer(@PathParam("player") UUID player) {
    return Templates.ofplayer(desk.unseenOf(player).stream().map(this::shown).toList()).render();
  }

  @POST
  @Path("/{id}/seen")
  @Transactional
  public Response seen(@PathParam("id") UUID id) {
    desk.seen(id);
    return Answers.goTo("/fitting/set-aside");
  }

  private Shown shown(SetAsideRow row) {
    ZoneId zone = Place.zoneOf(row.field);
    PlayerCopy player = PlayerCopy.findById(row.player);
    return new Shown(
        row.command,
        row.player,
        player == null ? "erased" : player.name(),
        row.fitter,
        Words.day(row.at, zone) + ", " + Words.time(row.at, zone),
        row.sentence,
        entries(row).stream()
            .map(
                e ->
                    new Line(
                        Words.time(e.enteredAt(), zone), said(e), e.command().equals(row.refused)))
            .toList());
  }

  private String said(SetAside.Entry entry) {
    Map<String, String> said = entry.said();
    String check = said.containsKey("check") ? protocols.inForce().question(said.get("check")) : "";
    return switch (entry.kind()) {
      case "open" -> "Fit check begun";
      case "helmet" -> "Helmet " + said.get("tag") + " put on";
      case "checks" ->
          check
              + ": "
              + said.get("result")
              + (said.containsKey("finding") ? ", " + said.get("finding") : "");
      case "adjustments" -> check + ": " + Words.item(String.valueOf(said.get("remedy")));
      case "passed-over" ->
          check + ": not possible, " + Words.item(String.valueOf(said.get("remedy")));
      case "corrections" -> check + ": taken back";
      case "pause" -> "Put aside for a while";
      case "resume" -> "Gone on with";
      case "pass" -> "Signed off";
      case "fail" -> "No fit";
      case "abandon" -> "Ended without a result";
      default -> entry.kind() + " " + said.values().stream().collect(Collectors.joining(", "));
    };
  }

  private static List<SetAside.Entry> entries(SetAsideRow row) {
    try {
      return EventJson.MAPPER.readValue(row.entries, new TypeReference<>() {});
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Entries that cannot be read: " + row.command, e);
    }
  }
}
