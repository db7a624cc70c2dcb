package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.tapeline.sizing.chart.ModelName;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.roster.PlayerEvent.SizeChance;

/** The newest advice for a model, for the pages. */
@Entity
@Table(name = "advice")
@IdClass(AdviceRow.Key.class)
public class AdviceRow extends PanacheEntityBase {
  @Id public UUID player;
  @Id public String model;

  @Column(name = "chart_version")
  public int chartVersion;

  public String size;
  public String second;
  public String outcome;
  public String reason;

  /** Such as {@code youth-medium=0.82 youth-large=0.18}; empty when they are not known. */
  public String chances;

  /** Both together. */
  public record Key(UUID player, String model) implements Serializable {}

  public String modelSaid() {
    return ModelName.said(model);
  }

  public String sizeSaid() {
    return size == null ? "No size of this model" : SizeRange.said(size);
  }

  public String secondSaid() {
    return second == null ? "" : SizeRange.said(second);
  }

  static List<AdviceRow> of(UUID player) {
    return list("player = ?1 order by model", player);
  }

  static Map<UUID, List<AdviceRow>> of(Collection<UUID> players) {
    return AdviceRow.<AdviceRow>list("player in ?1 order by model", players).stream()
        .collect(Collectors.groupingBy(row -> row.player));
  }

  PlayerEvent.ModelAdvice asAdvice() {
    return new PlayerEvent.ModelAdvice(
        model,
        chartVersion,
        Optional.ofNullable(size),
        Optional.ofNullable(second),
        outcome,
        reason,
        chances());
  }

  static String chances(List<SizeChance> chances) {
    return chances.stream().map(c -> c.size() + "=" + c.chance()).collect(Collectors.joining(" "));
  }

  private List<SizeChance> chances() {
    return Stream.of(chances.split(" "))
        .filter(word -> !word.isEmpty())
        .map(word -> word.split("="))
        .map(pair -> new SizeChance(pair[0], Double.parseDouble(pair[1])))
        .toList();
  }

  /** The sizes by their chance, such as {@code Youth medium 82 %, Youth large 18 %}. */
  public String chancesSaid() {
    return chances().stream()
        .sorted(Comparator.comparing(SizeChance::chance).reversed())
        .map(c -> SizeRange.said(c.size()) + " " + Math.round(c.chance() * 100) + " %")
        .collect(Collectors.joining(", "));
  }
}
