package org.tapeline.inventory.restock;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.DefaultValue;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.util.List;
import java.util.OptionalLong;
import java.util.UUID;
import org.jboss.resteasy.reactive.RestForm;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.SuggestionCommands.Ask;
import org.tapeline.inventory.restock.SuggestionCommands.Row;
import org.tapeline.inventory.restock.Suggestions.Mode;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Answers;
import org.tapeline.journal.quarkus.http.CommandId;
import org.tapeline.journal.quarkus.http.Problem;

/** What to request for the shelves, and why; one button requests it. */
@Path("/restock/suggestions")
@RolesAllowed({"equipment-manager", "warehouse"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class SuggestionsPage {
  private final Suggestions suggestions;
  private final SuggestionCommands commands;
  private final Places places;

  SuggestionsPage(Suggestions suggestions, SuggestionCommands commands, Places places) {
    this.suggestions = suggestions;
    this.commands = commands;
    this.places = places;
  }

  @CheckedTemplate(basePath = "restock")
  static class Templates {
    private Templates() {}

    static native TemplateInstance suggestions(
        Asked asked, List<Places.Place> places, SuggestionsView view, UUID commandId);
  }

  /**
   * What was asked for, as it was written.
   *
   * @param all also shelves of which nothing is suggested
   * @param wrong what is wrong with the budget; empty when nothing is
   */
  public record Asked(String mode, String place, String budget, boolean all, String wrong) {
    Asked with(String problem) {
      return new Asked(mode, place, budget, all, problem);
    }
  }

  @GET
  public Response show(
      @QueryParam("mode") @DefaultValue("in-season") String mode,
      @QueryParam("place") @DefaultValue("") String place,
      @QueryParam("budget") @DefaultValue("") String budget,
      @QueryParam("all") boolean all) {
    Asked asked = new Asked(Mode.of(mode).code(), place, budget, all, "");
    try {
      return page(200, asked, Money.of(budget));
    } catch (Problem problem) {
      return page(problem.status(), asked.with(problem.getMessage()), OptionalLong.empty());
    }
  }

  private Response page(int status, Asked asked, OptionalLong money) {
    List<Suggestion> found = suggestions.all(Mode.of(asked.mode()), asked.place(), money);
    SuggestionsView view = SuggestionsView.of(found, asked.all(), money);
    return Response.status(status)
        .entity(Templates.suggestions(asked, places.all(), view, UuidV7.next()).render())
        .build();
  }

  /**
   * @param row what is shown, each as place, item and pieces
   * @param only the one of them whose button was pressed; empty for all
   */
  @POST
  public Response request(
      @RestForm String commandId,
      @RestForm String mode,
      @RestForm List<String> row,
      @RestForm String only) {
    List<String> rows = only == null || only.isBlank() ? row : List.of(only);
    UUID id = CommandId.of(commandId);
    commands.request(
        new Ask(Mode.of(mode).code(), rows.stream().map(SuggestionsPage::read).toList()), id);
    return Answers.goTo("/inventory/restock");
  }

  private static Row read(String text) {
    String[] words = text.split(" ");
    if (words.length != 3 || !words[2].matches("[0-9]{1,6}")) {
      throw Problem.badRequest("row", "Open the suggestions again and choose there.");
    }
    return new Row(words[0], words[1], Integer.parseInt(words[2]));
  }
}
