package org.tapeline.inventory.restock;

import org.tapeline.inventory.demand.DemandCount;
import org.tapeline.inventory.demand.Demands.Demand;
import org.tapeline.inventory.demand.Horizon;
import org.tapeline.inventory.demand.LeadTime;
import org.tapeline.inventory.demand.SeasonStock;
import org.tapeline.inventory.demand.StockLevels;
import org.tapeline.inventory.place.Places.Place;
import org.tapeline.inventory.restock.RestockItems.Item;

/**
 * How much of an item a place should have, and what it has.
 *
 * @param levels for the season under way
 * @param promised the share of demand to be served from the shelf
 * @param season what may be asked for in a whole season
 */
public record Plan(
    Place place,
    Shelf shelf,
    Item item,
    Demand demand,
    LeadTime lead,
    double reviewDays,
    Horizon horizon,
    StockLevels levels,
    double promised,
    int seasonWeeks,
    DemandCount season) {

  /** What a place may give to others: a depot all that is nobody's, a field what it has over. */
  int spare() {
    int over = shelf.position() - levels.upTo();
    return place.kind().equals("depot") ? shelf.free() : Math.max(0, Math.min(shelf.free(), over));
  }

  /** Pieces to get for the season under way. */
  int orderNow() {
    return levels.order(shelf.position());
  }

  /** The fewest pieces with which the season can begin. */
  int forSeason() {
    return SeasonStock.keeping(promised, season);
  }

  /** The same plan for more shelves together. */
  Plan having(Shelf all) {
    return new Plan(
        place, all, item, demand, lead, reviewDays, horizon, levels, promised, seasonWeeks, season);
  }

  boolean depot() {
    return place.kind().equals("depot");
  }

  /** In whole packs. */
  int packed(int pieces) {
    return Math.ceilDiv(pieces, item.pack()) * item.pack();
  }
}
