package org.tapeline.fitting.refit;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.fitting.session.Need;

/**
 * A re-fit of a player who is not on the roster here, or not yet: the case is opened when the
 * player is. So it does not matter whether the roster or the helmet's trouble is heard of first.
 */
@Entity
@Table(name = "owed_refit")
public class OwedRefit extends PanacheEntityBase {
  @Id public UUID player;
  public String why;
  public String tag;
  public String needs;

  @Column(name = "correlation_id")
  public UUID correlationId;

  /** Unless what is owed already sees to it. */
  static void add(UUID player, RefitRules.Ask ask, UUID correlationId) {
    OwedRefit row = findById(player);
    if (row == null || !RefitRules.covers(row.ask(), ask)) {
      keep(player, ask, correlationId);
    }
  }

  static void keep(UUID player, RefitRules.Ask ask, UUID correlationId) {
    OwedRefit row = findById(player);
    if (row == null) {
      row = new OwedRefit();
      row.player = player;
    }
    row.why = ask.why();
    row.tag = ask.tag().orElse(null);
    row.needs = ask.needs().stream().map(Need::key).collect(Collectors.joining(" "));
    row.correlationId = correlationId;
    row.persistAndFlush();
  }

  RefitRules.Ask ask() {
    List<Need> asked = Arrays.stream(needs.split(" ")).map(Need::ofKey).toList();
    return new RefitRules.Ask(why, Optional.ofNullable(tag), asked);
  }

  static Optional<OwedRefit> take(UUID player) {
    Optional<OwedRefit> row = findByIdOptional(player);
    row.ifPresent(OwedRefit::delete);
    flush();
    return row;
  }
}
