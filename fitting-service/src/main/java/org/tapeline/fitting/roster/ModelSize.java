package org.tapeline.fitting.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.List;

/** A size of a model and its place in the order from small to large. */
@Entity
@Table(name = "model_size")
@IdClass(ModelSize.Key.class)
public class ModelSize extends PanacheEntityBase {
  @Id public String model;
  @Id public int place;
  public String size;

  /** Both together. */
  public record Key(String model, int place) implements Serializable {}

  /** Small to large. */
  public static List<String> of(String model) {
    return ModelSize.<ModelSize>list("model = ?1 order by place", model).stream()
        .map(row -> row.size)
        .toList();
  }
}
