package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.restock.Suggestions.Mode;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.http.Problem;

/** Requests what was suggested, as one command. */
@ApplicationScoped
public class SuggestionCommands {
  private static final int MOST = 100_000;

  private final Suggestions suggestions;
  private final Planner planner;
  private final RestockDesk desk;
  private final ShelfDesk shelves;
  private final WhenStockIsLowThenRequest low;
  private final Places places;
  private final CommandLog commands;

  SuggestionCommands(
      Suggestions suggestions,
      Planner planner,
      RestockDesk desk,
      ShelfDesk shelves,
      WhenStockIsLowThenRequest low,
      Places places,
      CommandLog commands) {
    this.suggestions = suggestions;
    this.planner = planner;
    this.desk = desk;
    this.shelves = shelves;
    this.low = low;
    this.places = places;
    this.commands = commands;
  }

  /** What somebody saw suggested and wants; pieces from 1. */
  public record Row(String place, String item, int quantity) {
    private String lock() {
      return place + " " + item;
    }
  }

  /** Rows of suggestions. */
  public record Ask(String mode, List<Row> rows) {}

  /**
   * What was requested.
   *
   * @param overtaken rows of which nothing is suggested any more: somebody else was quicker
   */
  public record After(List<UUID> requests, int overtaken) {}

  /** Never more than is suggested now: two who press the button do not order twice. */
  Answer request(Ask ask, UUID id) {
    if (ask == null || ask.rows() == null || ask.rows().isEmpty()) {
      throw Problem.badRequest("rows", "Choose what to request: nothing was chosen.");
    }
    ask.rows().forEach(SuggestionCommands::check);
    return commands.once(id, "restock-suggestions", ask, () -> Answer.of(200, does(ask, id)));
  }

  private static void check(Row row) {
    if (row.place() == null || row.item() == null || row.quantity() < 1 || row.quantity() > MOST) {
      throw Problem.badRequest(
          "rows", "Each row has a place, an item and a quantity from 1 to " + MOST + ".");
    }
  }

  private After does(Ask ask, UUID id) {
    Cause cause = Cause.command(id);
    List<UUID> requests = new ArrayList<>();
    ask.rows().stream()
        .distinct()
        .sorted(Comparator.comparing(Row::lock))
        .forEach(row -> request(row, Mode.of(ask.mode()), cause).ifPresent(requests::add));
    return new After(requests, ask.rows().size() - requests.size());
  }

  private Optional<UUID> request(Row row, Mode mode, Cause cause) {
    desk.lock(row.place(), row.item());
    return places
        .find(row.place())
        .flatMap(place -> planner.plan(place, row.item()))
        .map(plan -> suggestions.suggestion(mode, plan))
        .filter(now -> now.quantity() > 0)
        .map(now -> request(now, Math.min(now.quantity(), row.quantity()), cause));
  }

  private UUID request(Suggestion now, int pieces, Cause cause) {
    now.from().ifPresent(giver -> low.lowered(giver, now.item(), cause));
    return shelves.request(now.place(), now.item(), now.from(), pieces, cause).request();
  }
}
