package org.tapeline.inventory.allocation;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.tapeline.inventory.allocation.PlanWish.Bought;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.reconditioning.HelmetRules;

/** What a plan is worked out from, read in a few questions whatever the number of players. */
@ApplicationScoped
public class PlanFacts {
  private static final String FREE =
      """
      select h.tag, h.model, h.size, h.place, h.certified_until, h.manufactured_on,
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
  private final HelmetRules rules;
  private final Clock clock;

  PlanFacts(Database database, PlanSeekers seekers, HelmetRules rules, Clock clock) {
    this.database = database;
    this.seekers = seekers;
    this.rules = rules;
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
    Map<Kind, Map<String, Integer>> notFree = notFree(now);
    List<FreeHelmet> helmets = free(now, notFree);
    helmets.stream()
        .filter(h -> wish.without().contains(h.place()))
        .forEach(h -> count(notFree, h.kind(), "left-where-it-is", 1));
    helmets.removeIf(h -> wish.without().contains(h.place()));
    helmets.addAll(bought(wish));
    Situation situation = new Situation(found.known(), helmets, ways(), keeping(wish), now);
    return new Facts(situation, notFree, found.unknown());
  }

  private List<FreeHelmet> free(Instant now, Map<Kind, Map<String, Integer>> notFree) {
    List<FreeHelmet> free = new ArrayList<>();
    database.list(FREE, row -> add(free, notFree, row), now, now);
    return free;
  }

  private boolean add(List<FreeHelmet> free, Map<Kind, Map<String, Integer>> notFree, ResultSet row)
      throws SQLException {
    Kind kind = new Kind(row.getString("model"), row.getString("size"));
    HelmetRules.ForModel model = rules.of(kind.model());
    OptionalInt days =
        FreeHelmet.daysLeft(
            row.getObject("today", LocalDate.class),
            row.getObject("manufactured_on", LocalDate.class),
            Optional.ofNullable(row.getObject("certified_until", LocalDate.class)),
            model.certifiedMonths(),
            model.lastAgeYears());
    if (days.isEmpty()) {
      count(notFree, kind, "too-old", 1);
      return false;
    }
    return free.add(
        new FreeHelmet(row.getString("tag"), kind, row.getString("place"), days.getAsInt()));
  }

  private static List<FreeHelmet> bought(PlanWish wish) {
    List<FreeHelmet> helmets = new ArrayList<>();
    for (Bought bought : wish.bought()) {
      for (int i = 0; i < bought.pieces(); i++) {
        String tag = PlanLine.TO_BUY + (helmets.size() + 1);
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
