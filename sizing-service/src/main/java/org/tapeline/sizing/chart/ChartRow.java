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

  /** The row, made when the model had no chart before. */
  static ChartRow of(String model) {
    ChartRow row = findById(model);
    if (row == null) {
      row = new ChartRow();
      row.model = model;
    }
    return row;
  }

  void version(int newest) {
    version = newest;
    persist();
  }
}
