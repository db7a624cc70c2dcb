package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What a re-fit needs")
class NeedTest {

  private static void refused(String kind, String model, String size, String item) {
    assertThatThrownBy(
            () ->
                new Need(
                    kind,
                    Optional.ofNullable(model),
                    Optional.ofNullable(size),
                    Optional.ofNullable(item)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  @DisplayName("is found again by its key")
  void key() {
    for (Need need :
        new Need[] {Need.helmet("model-a", "youth-small"), Need.part("jaw-pad-15mm")}) {
      assertThat(Need.ofKey(need.key())).isEqualTo(need);
    }
  }

  @Test
  @DisplayName("is a helmet with model and size or a part, and never half of one")
  void whole() {
    refused("helmet", "model-a", null, null);
    refused("helmet", null, "youth-small", null);
    refused("helmet", "model-a", "youth-small", "valve");
    refused("part", null, null, null);
    refused("part", "model-a", null, "valve");
    refused("shoes", null, null, "valve");
    refused(null, null, null, "valve");
  }

  @Test
  @DisplayName("is said in codes, not in free words")
  void codes() {
    refused("helmet", "Model A", "youth-small", null);
    refused("helmet", "model-a", "", null);
    refused("part", null, null, "the small strap");
  }

  @Test
  @DisplayName("has no key that reads as that of something else")
  void keyOfItsOwn() {
    refused("helmet", "model:a", "youth-small", null);
    refused("helmet", "model-a", "youth:small", null);
    refused("part", null, null, "helmet:model-a:youth-small");
  }
}
