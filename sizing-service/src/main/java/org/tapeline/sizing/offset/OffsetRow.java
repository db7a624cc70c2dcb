package org.tapeline.sizing.offset;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;

/** What was learned of a model. */
@Entity
@Table(name = "model_offset")
public class OffsetRow extends PanacheEntityBase {
  @Id public String model;
  public long fits;
  public double[] weights;

  @Column(name = "applied_mm")
  public int appliedMm;

  static OffsetRow locked(String model) {
    OffsetRow row = findById(model, LockModeType.PESSIMISTIC_WRITE);
    if (row == null) {
      row = new OffsetRow();
      row.model = model;
      row.show(OffsetPosterior.prior());
      row.persist();
    }
    return row;
  }

  OffsetPosterior posterior() {
    return new OffsetPosterior(fits, weights);
  }

  void show(OffsetPosterior posterior) {
    fits = posterior.fits();
    weights = posterior.weights();
    appliedMm = posterior.appliedMm();
  }
}
