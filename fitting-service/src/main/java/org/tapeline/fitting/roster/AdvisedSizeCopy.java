package org.tapeline.fitting.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.UUID;

/** The newest advice of sizing for a player and model. */
@Entity
@Table(name = "advised_size")
@IdClass(AdvisedSizeCopy.Key.class)
public class AdvisedSizeCopy extends PanacheEntityBase {
  @Id public UUID player;
  @Id public String model;
  public String size;
  public String second;
  public String reason;

  /** When it was advised. */
  @Column(name = "advised_at")
  public Instant advisedAt;

  /** Both together. */
  public record Key(UUID player, String model) implements Serializable {}

  public String sizeSaid() {
    return size == null ? "no size of this model" : Words.size(size);
  }

  /** The row, made when the model was not advised on before. */
  static AdvisedSizeCopy of(UUID player, String model) {
    AdvisedSizeCopy row = findById(new Key(player, model));
    if (row == null) {
      row = new AdvisedSizeCopy();
      row.player = player;
      row.model = model;
    }
    return row;
  }

  /** Of many players at once, by model. */
  public static List<AdvisedSizeCopy> ofPlayers(Collection<UUID> players) {
    return players.isEmpty() ? List.of() : list("player in ?1 order by model", players);
  }

  /** When the newest of them was advised; empty for none. */
  public static Optional<Instant> newest(List<AdvisedSizeCopy> advice) {
    return advice.stream().map(a -> a.advisedAt).filter(Objects::nonNull).max(Instant::compareTo);
  }

  public static List<AdvisedSizeCopy> of(UUID player) {
    return list("player = ?1 order by model", player);
  }
}
