package org.tapeline.sizing.growth;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.tapeline.sizing.units.Millimetres;

/**
 * A head on a later day: it keeps its place among children of the age, but not quite. How far a
 * child wanders from its centile, {@value #WANDERS} standard deviations in a year, is an assumption
 * without a source, on the cautious side.
 *
 * @param mm expected circumference
 * @param spreadMm standard deviation, of the measurement and of growth
 */
public record Projection(double mm, double spreadMm) {
  private static final double WANDERS = 0.15;

  /** A head that was measured, with the standard deviation of the measurement. */
  public record Measured(Millimetres head, double spreadMm, LocalDate on) {}

  public static Projection of(
      GrowthReference reference,
      Optional<Sex> sex,
      LocalDate birth,
      Measured measured,
      LocalDate on) {
    double then = Age.years(birth, measured.on());
    double now = Math.max(then, Age.years(birth, on));
    List<Sex> sexes = sex.map(List::of).orElse(List.of(Sex.values()));
    double wandered = WANDERS * Math.sqrt(now - then);
    double mm = 0;
    double squares = 0;
    for (Sex s : sexes) {
      double z = reference.z(s, then, measured.head());
      double head = reference.headAtZ(s, now, z).value();
      double away = reference.headAtZ(s, now, z + wandered).value() - head;
      mm += head / sexes.size();
      squares += (head * head + away * away) / sexes.size();
    }
    double growth = Math.max(0, squares - mm * mm);
    return new Projection(mm, Math.sqrt(growth + measured.spreadMm() * measured.spreadMm()));
  }

  /** The chance that the head is then larger than this. */
  public double exceeds(Millimetres head) {
    return NormalDistribution.of(mm, Math.max(spreadMm, 1e-6)).survivalProbability(head.value());
  }
}
