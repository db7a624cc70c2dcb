package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.demand.DemandPriors;
import org.tapeline.inventory.demand.Demands;
import org.tapeline.inventory.demand.Demands.Demand;
import org.tapeline.inventory.demand.EconomicLot;
import org.tapeline.inventory.demand.Horizon;
import org.tapeline.inventory.demand.LeadTime;
import org.tapeline.inventory.demand.SeasonStock;
import org.tapeline.inventory.demand.StockLevels;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.place.Places.Place;
import org.tapeline.inventory.restock.RestockItems.Item;

/** Works out what a shelf should have, from what is known now. */
@ApplicationScoped
public class Planner {
  private final RestockItems items;
  private final RestockPolicy policy;
  private final Demands demands;
  private final DemandPriors priors;
  private final LeadTimes leadTimes;
  private final Shelves shelves;
  private final Catchment catchment;
  private final Places places;
  private final Clock clock;

  Planner(
      RestockItems items,
      RestockPolicy policy,
      Demands demands,
      DemandPriors priors,
      LeadTimes leadTimes,
      Shelves shelves,
      Catchment catchment,
      Places places,
      Clock clock) {
    this.items = items;
    this.policy = policy;
    this.demands = demands;
    this.priors = priors;
    this.leadTimes = leadTimes;
    this.shelves = shelves;
    this.catchment = catchment;
    this.places = places;
    this.clock = clock;
  }

  /** Empty when such a place keeps none of it, or nothing is known of its need. */
  Optional<Plan> plan(Place place, String item) {
    return items
        .of(item)
        .filter(known -> known.keptAt().contains(place.kind()))
        .flatMap(known -> plan(place, item, known));
  }

  private Optional<Plan> plan(Place place, String item, Item known) {
    boolean depot = place.kind().equals("depot");
    return demands
        .of(item, catchment.served(place.code(), depot))
        .map(demand -> plan(place, shelves.at(place.code(), item), known, demand));
  }

  private Plan plan(Place place, Shelf shelf, Item item, Demand demand) {
    LeadTime lead = leadTimes.fromOutside(shelf.item());
    Horizon horizon = Horizon.of(demand.rate(), demand.players(), lead, items.reviewDays());
    double promised = items.promised(item);
    return new Plan(
        place,
        shelf,
        item,
        demand,
        lead,
        items.reviewDays(),
        horizon,
        StockLevels.keeping(promised, horizon, lot(place, item, demand)),
        promised,
        priors.seasonWeeks(),
        demand.rate().demand(demand.players(), priors.seasonWeeks()));
  }

  /** A depot buys in packs and breaks them; a field takes single pieces from there. */
  private int lot(Place place, Item item, Demand demand) {
    if (!place.kind().equals("depot")) {
      return 1;
    }
    double yearly = demand.rate().mean() * demand.players() * priors.seasonWeeks();
    double keeping = item.cost() * items.keepingShareAYear();
    return new EconomicLot(items.orderCost(), yearly, keeping).packs(item.pack());
  }

  /** For the season under way. */
  Suggestion suggest(Plan plan) {
    int order = plan.orderNow();
    Optional<Plan> giver = order > 0 ? giver(plan) : Optional.empty();
    int pieces = giver.map(g -> Math.min(order, g.spare())).orElseGet(() -> plan.packed(order));
    return Suggestion.now(plan, giver.map(g -> g.place().code()), pieces);
  }

  /** One that lifts the shelf above its reorder point, sooner than from outside. */
  private Optional<Plan> giver(Plan plan) {
    int needed = plan.levels().reorderPoint() + 1 - plan.shelf().position();
    if (plan.depot() || plan.shelf().item().startsWith("helmet:") || !soonerThanOutside(plan)) {
      return Optional.empty();
    }
    return catchment.near(plan.place().code()).stream()
        .map(code -> places.find(code).flatMap(p -> plan(p, plan.shelf().item())))
        .flatMap(Optional::stream)
        .filter(other -> other.spare() >= needed)
        .findFirst();
  }

  private boolean soonerThanOutside(Plan plan) {
    Instant now = clock.instant();
    ZoneId zone = places.zone(plan.place().code());
    return policy.travelled(now, zone).isBefore(policy.restocked(plan.shelf().item(), now, zone));
  }

  /**
   * For a whole season: a depot gets what all its fields may need, less what they have; it brings
   * it to them during the season.
   */
  Suggestion beforeSeason(Plan plan) {
    List<String> fields = catchment.served(plan.place().code(), plan.depot());
    Shelf all = plan.shelf();
    for (String field : fields) {
      all = field.equals(all.place()) ? all : all.with(shelves.at(field, all.item()));
    }
    Plan together = plan.having(all);
    int missing = Math.max(0, plan.forSeason() - all.position());
    double rate = SeasonStock.fillRate(plan.season(), plan.forSeason());
    return Suggestion.beforeSeason(together, rate, plan.packed(missing));
  }
}
