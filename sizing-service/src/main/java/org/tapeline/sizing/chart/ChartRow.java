package org.tapeline.sizing.chart;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;

/** A model that has a chart. */
@Entity
@Table(name = "size_chart")
public class ChartRow extends PanacheEntityBase {
  @Id public String model;
  public int version;

  /** In which the chart was written; {@code null} when that is not known. */
  public String unit;
}
