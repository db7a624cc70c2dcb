package org.tapeline.inventory.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Sizes")
class SizeOrderTest {

  @Test
  @DisplayName("stand from small to large, youth before adult, unknown words last")
  void smallFirst() {
    List<String> mixed =
        List.of("adult-small", "zeta", "youth-x-large", "youth-small", "youth-medium", "alpha");
    assertThat(mixed.stream().sorted(SizeOrder.smallFirst()))
        .containsExactly(
            "youth-small", "youth-medium", "youth-x-large", "adult-small", "alpha", "zeta");
  }
}
