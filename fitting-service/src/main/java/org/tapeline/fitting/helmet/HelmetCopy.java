package org.tapeline.fitting.helmet;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * A helmet as inventory tells. Whom it is kept for comes from another stream than its own moves, so
 * that the two may come in any order.
 */
@Entity
@Table(name = "helmet")
public class HelmetCopy extends PanacheEntityBase {
  @Id public String tag;
  public String model;
  public String size;
  public String place;
  public String state = "unknown";
  public UUID holder;

  @Column(name = "reserved_for")
  public UUID reservedFor;

  @Column(name = "reserved_case")
  public UUID reservedCase;

  static HelmetCopy of(String tag) {
    HelmetCopy row = findById(tag);
    if (row == null) {
      row = new HelmetCopy();
      row.tag = tag;
    }
    return row;
  }

  public boolean inService() {
    return state.equals("available") || state.equals("issued");
  }

  /** Why this player may not have the helmet, in words; empty when nothing stands against it. */
  public Optional<String> refusalFor(UUID player) {
    return switch (state) {
      case "quarantined" ->
          Optional.of("This helmet is in quarantine. Put it aside and take another one.");
      case "retired" -> Optional.of("This helmet is retired. Put it aside and take another one.");
      case "unknown" -> Optional.of("This helmet has not been received into stock yet.");
      case "issued" ->
          player.equals(holder)
              ? Optional.empty()
              : Optional.of("Another player has this helmet. Take another one.");
      default ->
          reservedFor == null || player.equals(reservedFor)
              ? Optional.empty()
              : Optional.of("This helmet is kept for another player. Take another one.");
    };
  }

  /** Helmets at a field that the player may try, those of a size first. */
  public static List<HelmetCopy> at(String field) {
    return list("place = ?1 and state in ('available', 'issued') order by model, size, tag", field);
  }

  /** Kept for a player until the case is over. */
  public static void reserve(String tag, UUID refitCase, UUID player) {
    HelmetCopy row = of(tag);
    row.reservedFor = player;
    row.reservedCase = refitCase;
    row.persist();
  }

  /** Only by the case that holds it: a release may come after somebody else's reservation. */
  public static void release(String tag, UUID refitCase) {
    HelmetCopy row = of(tag);
    if (refitCase.equals(row.reservedCase)) {
      row.reservedFor = null;
      row.reservedCase = null;
      row.persist();
    }
  }
}
