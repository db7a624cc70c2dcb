package org.tapeline.sizing.draft;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.chart.SizeRange;
import org.tapeline.sizing.units.Millimetres;

@DisplayName("What a draft makes of a size")
class SizeChangeTest {
  private static final SizeRange SMALL = range("small", 495, 520);
  private static final SizeRange MEDIUM = range("medium", 521, 550);

  @Test
  @DisplayName("is said for every size of the draft, small to large, and then for the dropped ones")
  void words() {
    List<SizeChange> changes =
        SizeChange.between(
            List.of(SMALL, MEDIUM, range("large", 552, 580)),
            List.of(SMALL, range("medium", 520.5, 553.25), range("x-large", 590, 620)));
    assertThat(changes)
        .extracting(change -> change.size() + ": " + change.said())
        .containsExactly(
            "small: No change",
            "medium: Starts 0.5 mm lower, ends 3.25 mm higher",
            "x-large: New size",
            "large: Dropped");
  }

  @Test
  @DisplayName("names only the end that moves")
  void oneEnd() {
    assertThat(said(SMALL, range("small", 495, 518))).isEqualTo("Ends 2 mm lower");
    assertThat(said(SMALL, range("small", 500, 520))).isEqualTo("Starts 5 mm higher");
  }

  @Test
  @DisplayName("is nothing where only the unit in which it is written is another one")
  void conversion() {
    assertThat(said(range("small", 495.3, 520.7), range("small", 19.5 * 25.4, 20.5 * 25.4)))
        .isEqualTo("No change");
    assertThat(said(SMALL, range("small", 495.001, 520))).isEqualTo("Less than 0.01 mm");
  }

  @Test
  @DisplayName("shows ranges in mm as they are, and in inches to the sixteenth")
  void ranges() {
    Optional<SizeRange> medium = Optional.of(range("medium", 520.5, 556));
    assertThat(SizeChange.millimetres(medium)).isEqualTo("520.5 to 556 mm");
    assertThat(SizeChange.inches(medium)).isEqualTo("20 1/2 in to 21 7/8 in");
    assertThat(SizeChange.millimetres(Optional.empty())).isEqualTo("–");
  }

  private static String said(SizeRange now, SizeRange then) {
    return SizeChange.between(List.of(now), List.of(then)).getFirst().said();
  }

  private static SizeRange range(String size, double from, double to) {
    return new SizeRange(size, new Millimetres(from), new Millimetres(to));
  }
}
