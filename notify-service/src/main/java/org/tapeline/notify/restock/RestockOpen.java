package org.tapeline.notify.restock;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** The local copy of a restock request that is open; what came or was cancelled is gone. */
@Entity
@Table(name = "restock_open")
public class RestockOpen extends PanacheEntityBase {
  @Id public UUID request;

  /** Where it is needed. */
  public String place;

  /** Where it comes from; {@code null} while that is not settled. */
  @Column(name = "from_place")
  public String fromPlace;

  public String item;

  /** Pieces. */
  public int quantity;

  @Column(name = "expected_at")
  public Instant expectedAt;

  @Column(name = "requested_at")
  public Instant requestedAt;

  /** {@code requested}, {@code picked} or {@code shipped}. */
  public String state;

  /** The place whose depot serves it. */
  public String servedFrom() {
    return fromPlace == null ? place : fromPlace;
  }

  /** Those of them that are still open, in no order. */
  public static List<RestockOpen> of(List<UUID> requests) {
    return list("request in ?1", requests);
  }

  /** All, the one that is expected first, first. */
  public static List<RestockOpen> inOrder() {
    return list("order by expectedAt, request");
  }
}
