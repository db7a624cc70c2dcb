package org.tapeline.inventory.advice;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.journal.Subscription;

/** Which sizes a player may need, as sizing advised last; never the head or who it is. */
@ApplicationScoped
public class AdvisedSizes {
  private final Database database;

  AdvisedSizes(Database database) {
    this.database = database;
  }

  /** What is read of {@code size-advised}. */
  record Advised(UUID player, List<OfModel> advice) {}

  /** The advice for one model; no size when the head is outside of its chart. */
  record OfModel(
      String model,
      Optional<String> size,
      Optional<String> second,
      Optional<List<Chance>> chances) {}

  /** How likely a size is. */
  record Chance(String size, double chance) {}

  /**
   * A size that a player may need.
   *
   * @param choice 1 for the advised size, 2 for the second one to bring
   * @param chance that it is the size, 0 to 1, when sizing told it
   */
  public record Choice(String model, String size, int choice, Optional<Double> chance) {}

  public Subscription declareOn(Subscription subscription) {
    String of = "org.tapeline.sizing.";
    return subscription
        .events("sizing.events")
        .on(of + "size-advised.v1", Advised.class, (d, e) -> keep(d));
  }

  private void keep(Advised d) {
    forget(d.player());
    for (OfModel m : d.advice()) {
      m.size().ifPresent(size -> keep(d.player(), m, size, 1));
      m.second()
          .filter(second -> !m.size().equals(Optional.of(second)))
          .ifPresent(second -> keep(d.player(), m, second, 2));
    }
  }

  private void keep(UUID player, OfModel m, String size, int choice) {
    Double chance =
        m.chances().orElse(List.of()).stream()
            .filter(c -> c.size().equals(size))
            .map(Chance::chance)
            .findFirst()
            .orElse(null);
    database.change(
        "insert into advised_size (player, model, size, choice, chance)"
            + " values (?, ?, ?, ?, ?::double precision)",
        player,
        m.model(),
        size,
        choice,
        chance);
  }

  /** The player is no longer there. */
  public void forget(UUID player) {
    database.change("delete from advised_size where player = ?", player);
  }

  /** The advised sizes first, by model; none when no head was measured. */
  public List<Choice> of(UUID player) {
    return database.list(
        "select * from advised_size where player = ? order by choice, model, size",
        row ->
            new Choice(
                row.getString("model"),
                row.getString("size"),
                row.getInt("choice"),
                Optional.ofNullable(row.getObject("chance", Double.class))),
        player);
  }
}
