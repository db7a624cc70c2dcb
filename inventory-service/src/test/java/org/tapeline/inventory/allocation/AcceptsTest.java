package org.tapeline.inventory.allocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.allocation.Accepts.Advised;
import org.tapeline.inventory.allocation.Seeker.Acceptable;
import org.tapeline.inventory.allocation.Seeker.Liking;

@DisplayName("What a player may be given")
class AcceptsTest {
  private static final Kind LARGE_A = new Kind("model-a", "youth-large");
  private static final Kind MEDIUM_A = new Kind("model-a", "youth-medium");
  private static final Kind LARGE_B = new Kind("model-b", "youth-large");
  private static final Kind SMALL_B = new Kind("model-b", "youth-small");
  private static final List<Advised> ADVICE =
      List.of(
          new Advised(LARGE_A, false),
          new Advised(LARGE_B, false),
          new Advised(MEDIUM_A, true),
          new Advised(SMALL_B, true));

  @Test
  @DisplayName("without a helmet so far: every model, in the advised size, else in the second")
  void everyModel() {
    assertThat(Accepts.of(Optional.empty(), ADVICE, false))
        .containsExactly(
            new Acceptable(LARGE_A, Liking.ADVISED),
            new Acceptable(LARGE_B, Liking.ADVISED),
            new Acceptable(MEDIUM_A, Liking.SECOND_SIZE),
            new Acceptable(SMALL_B, Liking.SECOND_SIZE));
  }

  @Test
  @DisplayName("when a case asks for what is advised: that, and its second size")
  void asked() {
    assertThat(Accepts.of(Optional.of(LARGE_A), ADVICE, false))
        .containsExactly(
            new Acceptable(LARGE_A, Liking.ADVISED), new Acceptable(MEDIUM_A, Liking.SECOND_SIZE));
  }

  @Test
  @DisplayName("and other models where they are allowed, which are liked less")
  void otherModels() {
    assertThat(Accepts.of(Optional.of(LARGE_A), ADVICE, true))
        .containsExactly(
            new Acceptable(LARGE_A, Liking.ADVISED),
            new Acceptable(LARGE_B, Liking.OTHER_MODEL),
            new Acceptable(MEDIUM_A, Liking.SECOND_SIZE),
            new Acceptable(SMALL_B, Liking.OTHER_MODEL_SECOND_SIZE));
  }

  @Test
  @DisplayName("when a fit check taught that another size is needed: that alone")
  void taught() {
    assertThat(Accepts.of(Optional.of(MEDIUM_A), ADVICE, true))
        .containsExactly(new Acceptable(MEDIUM_A, Liking.ADVISED));
  }

  @Test
  @DisplayName("nothing, when nobody knows the size")
  void unknown() {
    assertThat(Accepts.of(Optional.empty(), List.of(), true)).isEmpty();
  }
}
