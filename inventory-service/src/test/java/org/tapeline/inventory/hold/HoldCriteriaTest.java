package org.tapeline.inventory.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.hold.HoldCriteria.Described;

@DisplayName("What a hold concerns")
class HoldCriteriaTest {
  private static final LocalDate MARCH = LocalDate.of(2025, 3, 1);
  private static final Described HELMET =
      new Described("LV260003Y", "model-a", "A-1", Optional.of(MARCH));

  private static HoldCriteria of(String model, Set<String> lots, LocalDate from, LocalDate to) {
    return new HoldCriteria(
        Optional.ofNullable(model),
        lots,
        Optional.ofNullable(from),
        Optional.ofNullable(to),
        Set.of());
  }

  @Test
  @DisplayName("is what meets all conditions that are given, the first and the last day included")
  void allConditions() {
    assertThat(of("model-a", Set.of("A-1", "A-2"), MARCH, MARCH).covers(HELMET)).isTrue();
    assertThat(of("model-b", Set.of("A-1"), MARCH, MARCH).covers(HELMET)).isFalse();
    assertThat(of("model-a", Set.of("A-2"), null, null).covers(HELMET)).isFalse();
    assertThat(of(null, Set.of(), MARCH.plusDays(1), null).covers(HELMET)).isFalse();
    assertThat(of(null, Set.of(), null, MARCH.minusDays(1)).covers(HELMET)).isFalse();
  }

  @Test
  @DisplayName("is also what stands on the tag list, whatever it is")
  void tagsAdd() {
    HoldCriteria other =
        new HoldCriteria(
            Optional.of("model-b"),
            Set.of(),
            Optional.empty(),
            Optional.empty(),
            Set.of("LV260003Y"));
    assertThat(other.covers(HELMET)).isTrue();
  }

  @Test
  @DisplayName("is also a helmet of which it is not known that it does not match")
  void notKnown() {
    Described unread = new Described("LV260003Y", "model-a", "not-stated", Optional.empty());
    assertThat(of("model-a", Set.of("A-9"), MARCH, MARCH).covers(unread)).isTrue();
    assertThat(of("model-b", Set.of("A-9"), null, null).covers(unread)).isFalse();
  }

  @Test
  @DisplayName("is nothing when nothing is given, which is refused before")
  void nothing() {
    HoldCriteria empty = of(null, Set.of(), null, null);
    assertThat(empty.saysNothing()).isTrue();
    assertThat(empty.covers(HELMET)).isFalse();
  }
}
