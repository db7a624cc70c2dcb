package org.tapeline.inventory.allocation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.allocation.AllocationPolicy.Band;
import org.tapeline.inventory.allocation.AllocationPolicy.Minutes;

@DisplayName("The policy of handing out")
class AllocationPolicyTest {
  private final AllocationPolicy policy = new PolicyFile().policy();

  @Test
  @DisplayName("of the service can be read, and says where its figures come from")
  void read() {
    assertThat(policy.source()).contains("common practice");
    assertThat(policy.keptDays()).isPositive();
  }

  @Test
  @DisplayName("puts the urgent first, then who has waited longer")
  void ranks() {
    AllocationPolicy p = AllocationPropertyTest.policy(0);
    assertThat(List.of(p.rank(false, 0), p.rank(false, 7), p.rank(false, 21)))
        .containsExactly(0, 1, 2);
    assertThat(List.of(p.rank(true, 6), p.rank(true, 20), p.rank(true, 90)))
        .containsExactly(3, 4, 5);
  }

  @Test
  @DisplayName("counts a way that is not known as the farthest, and packing for every way")
  void ways() {
    AllocationPolicy p = AllocationPropertyTest.policy(0);
    Ways ways = new Ways(Map.of("A", Map.of("B", 16, "C", 900)));
    assertThat(p.ofWay(ways, "A", "A")).isZero();
    assertThat(p.ofWay(ways, "A", "B")).isEqualTo(31);
    assertThat(p.ofWay(ways, "A", "C")).isEqualTo(135);
    assertThat(p.ofWay(ways, "B", "A")).isEqualTo(135);
  }

  @Test
  @DisplayName("counts little certification left, the less the dearer")
  void certification() {
    AllocationPolicy p = AllocationPropertyTest.policy(0);
    assertThat(List.of(p.ofDaysLeft(0), p.ofDaysLeft(30), p.ofDaysLeft(120)))
        .containsExactly(100, 20, 0);
  }

  @Test
  @DisplayName("wants one spare for every ten that are worn, and for the first of them")
  void spares() {
    AllocationPolicy p = AllocationPropertyTest.policy(0);
    assertThat(List.of(p.spares(0), p.spares(1), p.spares(10), p.spares(11)))
        .containsExactly(0, 1, 1, 2);
  }

  @Test
  @DisplayName("is refused with figures that make no sense, or without a source")
  void refused() {
    assertThatThrownBy(() -> with("x", -1, 21)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> with("x", 15, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> with(" ", 15, 21)).isInstanceOf(IllegalArgumentException.class);
  }

  private static AllocationPolicy with(String source, int handling, int keptDays) {
    return new AllocationPolicy(
        1,
        source,
        new Minutes(handling, 60, 30, 10, 120),
        List.of(new Band(30, 100)),
        List.of(7),
        1,
        0.1,
        keptDays);
  }
}
