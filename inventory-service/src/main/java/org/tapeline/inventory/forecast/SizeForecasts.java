package org.tapeline.inventory.forecast;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.Subscription;

/** What sizing expects the roster to need, beside what is there. */
@ApplicationScoped
public class SizeForecasts {
  private static final String BESIDE_STOCK =
      """
      select f.*, (select count(*) from helmet h
                    where h.model = f.model and h.size = f.size
                      and h.state not in ('ordered', 'quarantined', 'held', 'retired')) as usable
        from size_forecast f order by model, place_in_chart
      """;

  private final Database database;

  SizeForecasts(Database database) {
    this.database = database;
  }

  /** What is read of {@code size-mix-forecast}. */
  record Told(String model, LocalDate day, List<Size> sizes, Instant at) {}

  /** The need of one size. */
  record Size(String size, double expected, int low, int high, int order) {}

  /**
   * A size for a page.
   *
   * @param low the need is below it in at most 5 of 100 cases
   * @param high the need is above it in at most 5 of 100 cases
   * @param order what sizing advised to get when it told
   * @param usable helmets that are neither only ordered nor in quarantine, on hold or retired, now
   */
  public record Line(
      String model,
      String size,
      LocalDate neededOn,
      long expected,
      int low,
      int high,
      int order,
      long usable) {

    /** Fewer are there than are needed in all but the luckiest case. */
    public boolean isShort() {
      return usable < low;
    }
  }

  public Subscription declareOn(Subscription subscription) {
    return subscription
        .events("sizing.events")
        .on("org.tapeline.sizing.size-mix-forecast.v1", Told.class, (told, event) -> keep(told));
  }

  private void keep(Told told) {
    database.change("delete from size_forecast where model = ?", told.model());
    for (int i = 0; i < told.sizes().size(); i++) {
      Size size = told.sizes().get(i);
      database.change(
          "insert into size_forecast values (?, ?, ?, ?, ?, ?, ?, ?, ?)",
          told.model(),
          size.size(),
          i,
          told.day(),
          size.expected(),
          size.low(),
          size.high(),
          size.order(),
          told.at());
    }
  }

  public List<Line> besideStock() {
    return database.list(
        BESIDE_STOCK,
        row ->
            new Line(
                row.getString("model"),
                row.getString("size"),
                row.getObject("needed_on", LocalDate.class),
                Math.round(row.getDouble("expected")),
                row.getInt("low"),
                row.getInt("high"),
                row.getInt("to_order"),
                row.getLong("usable")));
  }
}
