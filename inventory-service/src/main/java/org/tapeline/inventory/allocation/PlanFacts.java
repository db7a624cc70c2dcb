package org.tapeline.inventory.allocation;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tapeline.inventory.allocation.PlanWish.Bought;
import org.tapeline.inventory.database.Database;

/** What a plan is worked out from, read in a few questions whatever the number of players. */
@ApplicationScoped
public class PlanFacts {
  static final String TO_BUY = "to-buy-";

  private static final String FREE =
      """
      select h.tag, h.model, h.size, h.place, h.certified_until,
             (?::timestamptz at time zone p.zone)::date as today
        from helmet h join place p on p.code = h.place
       where h.state = 'available' and h.reserved_for is null and h.planned_for is null
         and (h.certified_until is null
              or h.certified_until >= (?::timestamptz at time zone p.zone)::date)
       order by h.tag
      """;
  private static final String NOT_FREE =
      """
      select h.model, h.size,
             case when h.state = 'available' and h.planned_for is not null then 'planned'
                  when h.state = 'available' and h.reserved_for is not null then 'reserved'
                  when h.state = 'available' then 'out-of-certification'
                  else h.state end as why, count(*) as pieces
        from helmet h join place p on p.code = h.place
       where h.state not in ('issued', 'retired')
         and not (h.state = 'available' and h.reserved_for is null and h.planned_for is null
                  and (h.certified_until is null
                       or h.certified_until >= (?::timestamptz at time zone p.zone)::date))
       group by 1, 2, 3
      """;

  private final Database database;
  private final PlanSeekers seekers;
  private final Clock clock;

  PlanFacts(Database database, PlanSeekers seekers, Clock clock) {
    this.database = database;
    this.seekers = seekers;
    this.clock = clock;
  }

  /**
   * The question with what surrounds it.
   *
   * @param notFree how many helmets of a kind cannot be given to anybody now, by why
   * @param unknown players who need a helmet and whose size nobody knows, by field
   */
  record Facts(
      Situation situation, Map<Kind, Map<String, Integer>> notFree, Map<String, Integer> unknown) {}

  Facts of(PlanWish wish) {
    Instant now = clock.instant();
    PlanSeekers.Found found = seekers.of(wish, now);
    List<FreeHelmet> helmets = new ArrayList<>(free(now));
    Map<Kind, Map<String, Integer>> notFree = notFree(now);
    helmets.stream()
        .filter(h -> wish.without().contains(h.place()))
        .forEach(h -> count(notFree, h.kind(), "left-where-it-is", 1));
    helmets.removeIf(h -> wish.without().contains(h.place()));
    helmets.addAll(bought(wish));
    Situation situation = new Situation(found.known(), helmets, ways(), keeping(wish), now);
    return new Facts(situation, notFree, found.unknown());
  }

  private List<FreeHelmet> free(Instant now) {
    return database.list(
        FREE,
        row ->
            new FreeHelmet(
                row.getString("tag"),
                new Kind(row.getString("model"), row.getString("size")),
                row.getString("place"),
                daysLeft(
                    row.getObject("today", LocalDate.class),
                    row.getObject("certified_until", LocalDate.class))),
        now,
        now);
  }

  private static int daysLeft(LocalDate today, LocalDate until) {
    return until == null ? 0 : (int) Math.min(ChronoUnit.DAYS.between(today, until), 10_000);
  }

  private static List<FreeHelmet> bought(PlanWish wish) {
    List<FreeHelmet> helmets = new ArrayList<>();
    for (Bought bought : wish.bought()) {
      for (int i = 0; i < bought.pieces(); i++) {
        String tag = TO_BUY + (helmets.size() + 1);
        helmets.add(new FreeHelmet(tag, bought.kind(), bought.place(), 10_000));
      }
    }
    return helmets;
  }

  private Map<Kind, Map<String, Integer>> notFree(Instant now) {
    Map<Kind, Map<String, Integer>> counts = new TreeMap<>();
    database.list(
        NOT_FREE,
        row ->
            count(
                counts,
                new Kind(row.getString("model"), row.getString("size")),
                row.getString("why"),
                row.getInt("pieces")),
        now);
    return counts;
  }

  private static int count(
      Map<Kind, Map<String, Integer>> counts, Kind kind, String why, int pieces) {
    return counts.computeIfAbsent(kind, k -> new TreeMap<>()).merge(why, pieces, Integer::sum);
  }

  private Ways ways() {
    Map<String, Map<String, Integer>> minutes = new TreeMap<>();
    database.list(
        "select from_place, to_place, minutes from travel",
        row ->
            minutes
                .computeIfAbsent(row.getString(1), from -> new TreeMap<>())
                .put(row.getString(2), row.getInt(3)));
    return new Ways(minutes);
  }

  /**
   * The fields that keep their last helmets; where spares are evened out, all spares are wanted.
   */
  private Set<String> keeping(PlanWish wish) {
    return wish.forPlayers() ? fields() : Set.of();
  }

  private Set<String> fields() {
    return database
        .list("select code from place where kind = 'field'", row -> row.getString(1))
        .stream()
        .collect(Collectors.toCollection(TreeSet::new));
  }
}
