package org.tapeline.fitting.roster;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.List;
import java.util.Map;

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

  /** The sizes of every model, small to large. */
  public static Map<String, List<String>> byModel() {
    return ModelSize.<ModelSize>list("order by model, place").stream()
        .collect(groupingBy(row -> row.model, mapping(row -> row.size, toList())));
  }

  /** Every size that a chart knows, once, small to large. */
  public static List<String> allSizes() {
    return ModelSize.<ModelSize>list("order by place, size").stream()
        .map(row -> row.size)
        .distinct()
        .toList();
  }

  /** The sizes of the model's newest chart, small to large. */
  static void replace(String model, List<String> sizes) {
    for (int place = 0; place < sizes.size(); place++) {
      ModelSize row = findById(new Key(model, place));
      if (row == null) {
        row = new ModelSize();
        row.model = model;
        row.place = place;
      }
      row.size = sizes.get(place);
      row.persistAndFlush();
    }
    ModelSize.<ModelSize>list("model = ?1 and place >= ?2", model, sizes.size())
        .forEach(ModelSize::delete);
    flush();
  }
}
