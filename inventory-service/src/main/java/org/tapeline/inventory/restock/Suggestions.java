package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.Stream;
import org.tapeline.inventory.demand.Budget;
import org.tapeline.inventory.demand.Budget.Want;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.place.Places.Place;

/** What to request for all shelves, within the money that there is. */
@ApplicationScoped
public class Suggestions {
  private final Planner planner;
  private final RestockItems items;
  private final Shelves shelves;
  private final Places places;

  Suggestions(Planner planner, RestockItems items, Shelves shelves, Places places) {
    this.planner = planner;
    this.items = items;
    this.shelves = shelves;
    this.places = places;
  }

  /** For the season under way, or for a whole season to come. */
  public enum Mode {
    IN_SEASON,
    PRE_SEASON;

    static Mode of(String code) {
      return "pre-season".equals(code) ? PRE_SEASON : IN_SEASON;
    }

    public String code() {
      return this == PRE_SEASON ? "pre-season" : "in-season";
    }
  }

  private record Planned(Plan plan, Suggestion suggestion) {}

  /**
   * Every shelf, by place and item.
   *
   * @param at only this place; empty for all
   * @param money in hundredths of the currency; empty for as much as it takes
   */
  List<Suggestion> all(Mode mode, String at, OptionalLong money) {
    List<String> all =
        Stream.concat(items.parts().stream(), shelves.helmetItems().stream()).toList();
    List<Planned> planned = new ArrayList<>();
    for (Place place : planning(mode)) {
      if (at.isEmpty() || at.equals(place.code())) {
        for (String item : all) {
          planner
              .plan(place, item)
              .map(plan -> new Planned(plan, suggestion(mode, plan)))
              .ifPresent(planned::add);
        }
      }
    }
    return money.isPresent()
        ? within(money.getAsLong(), planned)
        : planned.stream().map(Planned::suggestion).toList();
  }

  /** Before the season the depots order, each for its fields; without depots the fields. */
  private List<Place> planning(Mode mode) {
    List<Place> depots = places.all().stream().filter(p -> p.kind().equals("depot")).toList();
    return mode == Mode.IN_SEASON || depots.isEmpty() ? places.all() : depots;
  }

  Suggestion suggestion(Mode mode, Plan plan) {
    return switch (mode) {
      case IN_SEASON -> planner.suggest(plan);
      case PRE_SEASON -> planner.beforeSeason(plan);
    };
  }

  private static List<Suggestion> within(long money, List<Planned> planned) {
    List<Want> wants =
        planned.stream()
            .filter(Suggestions::costs)
            .map(p -> p.suggestion().want(p.plan()))
            .toList();
    List<Integer> bought = new ArrayList<>(Budget.within(money, wants));
    return planned.stream()
        .map(p -> costs(p) ? p.suggestion().granting(bought.removeFirst()) : p.suggestion())
        .toList();
  }

  private static boolean costs(Planned planned) {
    return planned.suggestion().cost() > 0;
  }
}
