package org.tapeline.inventory.allocation;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.inventory.allocation.Accepts.Advised;
import org.tapeline.inventory.database.Database;

/** Who needs a helmet, with what fits; whoever has one planned already is left out. */
@ApplicationScoped
public class PlanSeekers {
  private static final String WAITING =
      """
      select distinct on (c.player) c.player, c.field, c.urgency = 'do-not-wear' as urgent,
             n.waiting_since as since, n.model, n.size
        from refit_case c join case_need n on n.refit_case = c.refit_case
       where c.open and n.kind = 'helmet' and n.status = 'waiting'
         and not exists (select 1 from planned_helmet p where p.player = c.player)
       order by c.player, n.waiting_since
      """;
  private static final String ROSTER =
      """
      select f.player, f.field, %s as urgent, ?::timestamptz as since, o.model, o.size
        from player_field f left join helmet o on o.holder = f.player
       where not exists (select 1 from planned_helmet p where p.player = f.player)
         and not exists (select 1 from reservation r where r.player = f.player
                          and r.tag is not null and r.status = 'live')
         and %s
       order by f.player
      """;
  private static final String WITHOUT_HELMET = "o.tag is null";
  private static final String NAMED = "f.player = any (string_to_array(?, ',')::uuid[])";
  private static final String OF_HOLD =
      """
      o.tag is null and f.player in
        (select player from hold_helmet where hold = ?::uuid and player is not null)
      """;

  private final SparesWanted spares;
  private final Database database;

  PlanSeekers(SparesWanted spares, Database database) {
    this.spares = spares;
    this.database = database;
  }

  /** Those whose size is known, and how many at each field have a size that is not. */
  record Found(List<Seeker> known, Map<String, Integer> unknown) {}

  private record Row(
      UUID player, String field, boolean urgent, Instant since, Optional<Kind> asked) {}

  Found of(PlanWish wish, Instant now) {
    if (!wish.forPlayers()) {
      return new Found(spares.wanted(now), Map.of());
    }
    List<Row> rows = rows(wish, now);
    Map<UUID, List<Advised>> advice =
        advice(rows.stream().map(Row::player).collect(Collectors.toSet()));
    List<Seeker> known = new ArrayList<>();
    Map<String, Integer> unknown = new TreeMap<>();
    for (Row row : rows) {
      List<Seeker.Acceptable> accepts =
          Accepts.of(row.asked(), advice.getOrDefault(row.player(), List.of()), wish.otherModels());
      if (accepts.isEmpty()) {
        unknown.merge(row.field(), 1, Integer::sum);
      } else {
        known.add(new Seeker(row.player(), row.field(), row.urgent(), row.since(), accepts));
      }
    }
    return new Found(known, unknown);
  }

  /** What a case says of a player counts more than what the roster says. */
  private List<Row> rows(PlanWish wish, Instant now) {
    Map<UUID, Row> rows = new LinkedHashMap<>();
    List<Row> waiting = database.list(WAITING, PlanSeekers::read);
    List<Row> roster =
        switch (wish.sort()) {
          case CASES, EVEN_OUT -> List.of();
          case SEASON -> roster(false, WITHOUT_HELMET, now);
          case HOLD ->
              wish.players().isEmpty()
                  ? roster(true, OF_HOLD, now, wish.about())
                  : roster(true, NAMED, now, join(wish.players()));
        };
    roster.forEach(row -> rows.put(row.player(), row));
    for (Row row : waiting) {
      if (wish.sort() != PlanWish.Sort.HOLD || rows.containsKey(row.player())) {
        rows.put(row.player(), row);
      }
    }
    boolean oneField = wish.sort() != PlanWish.Sort.HOLD && !wish.about().isEmpty();
    return rows.values().stream()
        .filter(row -> !oneField || row.field().equals(wish.about()))
        .toList();
  }

  private List<Row> roster(boolean urgent, String which, Object... values) {
    return database.list(ROSTER.formatted(urgent, which), PlanSeekers::read, values);
  }

  private static Row read(ResultSet row) throws SQLException {
    String model = row.getString("model");
    return new Row(
        row.getObject("player", UUID.class),
        row.getString("field"),
        row.getBoolean("urgent"),
        Database.instant(row, "since"),
        model == null ? Optional.empty() : Optional.of(new Kind(model, row.getString("size"))));
  }

  private Map<UUID, List<Advised>> advice(Collection<UUID> players) {
    Map<UUID, List<Advised>> advice = new HashMap<>();
    database.list(
        "select player, model, size, choice from advised_size"
            + " where player = any (string_to_array(?, ',')::uuid[])"
            + " order by player, choice, model, size",
        row ->
            advice
                .computeIfAbsent(row.getObject(1, UUID.class), p -> new ArrayList<>())
                .add(new Advised(new Kind(row.getString(2), row.getString(3)), row.getInt(4) == 2)),
        join(players));
    return advice;
  }

  static String join(Collection<?> ids) {
    return ids.stream().map(Object::toString).collect(Collectors.joining(","));
  }
}
