package org.tapeline.sizing.fitting;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.Map;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.sizing.chart.ModelName;
import org.tapeline.sizing.chart.SizeRange;

/** The size in which a player's fit check passed last. */
@Entity
@Table(name = "passed_size")
public class PassedSize extends PanacheEntityBase {
  @Id public UUID player;
  public String model;
  public String size;
  public Instant at;

  /** The newest wins: sessions of a player are streams of their own. */
  static void show(FitPassed passed) {
    PassedSize row = findById(passed.player());
    if (row == null) {
      row = new PassedSize();
      row.player = passed.player();
    } else if (row.at.isAfter(passed.at())) {
      return;
    }
    row.model = passed.model();
    row.size = passed.size();
    row.at = passed.at();
    row.persist();
  }

  public static Map<UUID, PassedSize> of(Collection<UUID> players) {
    return PassedSize.<PassedSize>list("player in ?1", players).stream()
        .collect(Collectors.toMap(passed -> passed.player, passed -> passed));
  }

  public String modelSaid() {
    return ModelName.said(model);
  }

  public String sizeSaid() {
    return SizeRange.said(size);
  }
}
