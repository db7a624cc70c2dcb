package org.tapeline.inventory.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.desk.ShortLine.Arrival;
import org.tapeline.inventory.desk.ShortLine.Counts;
import org.tapeline.inventory.desk.ShortLine.Forecast;
import org.tapeline.inventory.desk.Shortage.Dated;

@DisplayName("Something is short")
class ShortageTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 8, 1);

  private static Dated on(int day, int pieces) {
    return new Dated(TODAY.plusDays(day), pieces);
  }

  @Test
  @DisplayName("from the first day on which the needs are more than is there and has come")
  void firstDay() {
    assertThat(Shortage.of(5, List.of(on(3, 4), on(10, 4)), List.of()))
        .contains(new Shortage(TODAY.plusDays(10), 3));
    assertThat(Shortage.of(5, List.of(on(3, 4), on(10, 4)), List.of(on(10, 3)))).isEmpty();
    assertThat(Shortage.of(5, List.of(on(3, 4), on(10, 4)), List.of(on(11, 3))))
        .contains(new Shortage(TODAY.plusDays(10), 3));
  }

  @Test
  @DisplayName("not when nothing is needed, and books below nothing count as nothing")
  void edges() {
    assertThat(Shortage.of(0, List.of(), List.of())).isEmpty();
    assertThat(Shortage.of(-2, List.of(on(0, 1)), List.of())).contains(new Shortage(TODAY, 1));
  }

  @Test
  @DisplayName("for who waits and for the season: the earlier day and the larger number are said")
  void both() {
    Forecast season = new Forecast(TODAY.plusDays(20), 60.4, 55, 66);
    Counts counts = new Counts(50, 0, 2, 1, TODAY.minusDays(3));
    ShortLine line =
        ShortLine.of("helmet:model-a:l", Optional.of(season), counts, List.of(), TODAY);
    assertThat(line.shortage()).contains(new Shortage(TODAY.minusDays(3), 10));
  }

  @Test
  @DisplayName("though something is late or has no day: neither counts for today")
  void lateAndUndated() {
    Counts counts = new Counts(0, 0, 1, 0, TODAY);
    List<Arrival> arrivals =
        List.of(
            new Arrival("part", Optional.of(TODAY.minusDays(5)), 4),
            new Arrival("part", Optional.empty(), 9));
    ShortLine line = ShortLine.of("part", Optional.empty(), counts, arrivals, TODAY);
    assertThat(line.shortage()).contains(new Shortage(TODAY, 1));
    assertThat(line.onTheWay()).isEqualTo(13);
    assertThat(line.coming()).containsExactly(on(1, 4));
  }

  @Test
  @DisplayName("when the books hold fewer than nothing, so that somebody counts")
  void below() {
    Counts counts = new Counts(-2, -2, 0, 0, TODAY);
    assertThat(ShortLine.of("part", Optional.empty(), counts, List.of(), TODAY).shortage())
        .contains(new Shortage(TODAY, 2));
  }
}
