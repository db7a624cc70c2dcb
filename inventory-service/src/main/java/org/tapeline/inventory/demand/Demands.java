package org.tapeline.inventory.demand;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.stock.Move;

/** What is known of the need of an item at a place, from the prior and what was used there. */
@ApplicationScoped
public class Demands {
  private static final String WEEKS =
      """
      select count(*) from (
        select date_trunc('week', m.at) from ledger_move m
          join ledger_entry e on e.move = m.id
         where e.account = 'outside:used' and m.at > ?
        union
        select week from
          generate_series(date_trunc('week', ?::timestamptz), ?::timestamptz, interval '7 days') week
         where exists (select 1 from refit_case c
                        where c.opened_at >= week and c.opened_at < week + interval '7 days'
                          and c.opened_at > ?)) weeks
      """;
  private static final String PARTS_USED =
      """
      select coalesce(-sum(e.amount), 0) from ledger_entry e join ledger_move m on m.id = e.move
       where e.account = any (string_to_array(?, ',')) and e.item = ? and m.at > ?
         and exists (select 1 from ledger_entry o
                      where o.move = e.move and o.account = 'outside:used')
      """;
  private static final String HELMETS_NEEDED =
      """
      select count(*) from case_need n join refit_case c on c.refit_case = n.refit_case
       where c.field = any (string_to_array(?, ',')) and n.need_key = ? and c.opened_at > ?
      """;
  private static final String PLAYERS =
      "select count(*) from player_field where field = any (string_to_array(?, ','))";
  private static final String WEARERS =
      """
      select count(*) from helmet h join player_field p on p.player = h.holder
       where p.field = any (string_to_array(?, ','))
         and h.holder is not null and h.model = split_part(?, ':', 2) and h.size = split_part(?, ':', 3)
      """;

  private final DemandPriors priors;
  private final Database database;
  private final Clock clock;

  Demands(DemandPriors priors, Database database, Clock clock) {
    this.priors = priors;
    this.database = database;
    this.clock = clock;
  }

  /**
   * The need at a place.
   *
   * @param players who may need the item: of the fields that the place serves, or of these the
   *     wearers of that helmet
   * @param used pieces that were used in the weeks that are remembered
   * @param weeks in which anything was used or a re-fit opened anywhere: others had no play
   */
  public record Demand(DemandRate rate, int players, int used, int weeks) {}

  /**
   * Empty when nothing is known of the item.
   *
   * @param fields that the place serves; a field serves itself
   */
  public Optional<Demand> of(String item, List<String> fields) {
    return priors.of(item).map(prior -> seen(prior, item, fields));
  }

  private Demand seen(DemandRate prior, String item, List<String> fields) {
    Instant now = clock.instant();
    Instant since = now.minus(Duration.ofDays(7L * priors.memoryWeeks()));
    boolean helmet = item.startsWith("helmet:");
    String at = String.join(",", fields);
    String accounts = fields.stream().map(Move::place).collect(Collectors.joining(","));
    int weeks = number(WEEKS, since, since, now, since);
    int players = helmet ? number(WEARERS, at, item, item) : number(PLAYERS, at);
    int used =
        helmet
            ? number(HELMETS_NEEDED, at, item, since)
            : number(PARTS_USED, accounts, item, since);
    return new Demand(
        prior.after(Math.max(0, used), (double) weeks * players), players, used, weeks);
  }

  private int number(String sql, Object... values) {
    return database.first(sql, row -> row.getInt(1), values).orElse(0);
  }
}
