package org.tapeline.sizing.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.growth.Projection.Measured;
import org.tapeline.sizing.units.Millimetres;

@DisplayName("Growing out of a size")
class OutgrowthTest {
  private static final GrowthReference KIGGS = Kiggs.reference();
  private static final Optional<Sex> BOY = Optional.of(Sex.MALE);
  private static final LocalDate BIRTH = LocalDate.of(2014, 6, 1);
  private static final LocalDate MEASURED = LocalDate.of(2026, 6, 1);
  private static final LocalDate SEASON_END = LocalDate.of(2026, 11, 30);

  // KiGGS: a boy of the median at 12 grows 5.1 mm until 13 (docs/references.md, A).
  @Test
  @DisplayName("follows the growth of the reference")
  void projection() {
    Millimetres median = KIGGS.headAt(BOY, 12, 0.5);
    Projection next =
        Projection.of(
            KIGGS, BOY, BIRTH, new Measured(median, 1.4, MEASURED), MEASURED.plusYears(1));
    assertThat(next.mm() - median.value()).isCloseTo(5.1, within(0.1));
    assertThat(next.spreadMm()).isGreaterThan(1.4);
  }

  @Test
  @DisplayName("is likelier near the edge, and due sooner")
  void nearTheEdge() {
    Outgrowth near = at(551);
    Outgrowth far = at(530);
    assertThat(near.chance()).isGreaterThan(0.5);
    assertThat(far.chance()).isLessThan(0.01);
    assertThat(near.remeasureOn()).isBefore(far.remeasureOn());
    assertThat(far.remeasureOn()).isEqualTo(MEASURED.plusDays(365));
    assertThat(near.remeasureOn()).isAfter(MEASURED);
  }

  @Test
  @DisplayName("wants a new measurement later the larger the risk that is taken")
  void risk() {
    assertThat(at(549, 0.3).remeasureOn()).isAfter(at(549, 0.1).remeasureOn());
  }

  private static Outgrowth at(double mm) {
    return at(mm, 0.1);
  }

  private static Outgrowth at(double mm, double risk) {
    Measured head = new Measured(new Millimetres(mm), 1.4, MEASURED);
    return Outgrowth.of(KIGGS, BOY, BIRTH, head, new Millimetres(553), SEASON_END, risk);
  }
}
