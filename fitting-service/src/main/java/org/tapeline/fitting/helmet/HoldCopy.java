package org.tapeline.fitting.helmet;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;

/**
 * A hold as inventory tells: what it asks of a helmet, and for what it was lifted; see {@link
 * HoldHelmets} for tags.
 */
@Entity
@Table(name = "hold")
public class HoldCopy extends PanacheEntityBase {
  @Id public UUID hold;

  /** Empty for any. */
  public String model;

  /** Any of these; empty for all lots. */
  public List<String> lots = new ArrayList<>();

  @Column(name = "made_from")
  public LocalDate madeFrom;

  @Column(name = "made_to")
  public LocalDate madeTo;

  /** In whole. */
  public boolean lifted;

  @Column(name = "lifted_lots")
  public List<String> liftedLots = new ArrayList<>();

  @Column(name = "lifted_places")
  public List<String> liftedPlaces = new ArrayList<>();
}
