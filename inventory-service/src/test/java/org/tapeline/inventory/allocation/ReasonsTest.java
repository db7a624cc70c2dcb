package org.tapeline.inventory.allocation;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.allocation.Seeker.Acceptable;
import org.tapeline.inventory.allocation.Seeker.Liking;

@DisplayName("Who gets no helmet is told")
class ReasonsTest {
  private static final Kind LARGE_A = new Kind("model-a", "youth-large");
  private static final Kind LARGE_B = new Kind("model-b", "youth-large");
  private static final AllocationPolicy POLICY = AllocationPropertyTest.policy(1);

  private final List<Seeker> seekers = new ArrayList<>();
  private final List<FreeHelmet> helmets = new ArrayList<>();

  @Test
  @DisplayName("that there is none, and where those are that are not free")
  void none() {
    seeker("NORTH", false, LARGE_A, LARGE_B);
    seeker("NORTH", false, LARGE_A, LARGE_B);
    Map<Kind, Map<String, Integer>> notFree =
        Map.of(LARGE_A, Map.of("at-reconditioner", 3), LARGE_B, Map.of("held", 2));
    assertThat(reasons(notFree))
        .containsExactly(
            new Reason(
                "NORTH",
                2,
                "There is no free helmet of Youth large in Model A or Model B."
                    + " Not to be had: 3 at the reconditioner, 2 on hold.",
                "2 more of Youth large in Model A at NORTH"));
  }

  @Test
  @DisplayName("how many players come first, and how many are alike")
  void taken() {
    helmet("A1", LARGE_A);
    helmet("A2", LARGE_A);
    helmet("A3", LARGE_A);
    seeker("NORTH", true, LARGE_A);
    seeker("NORTH", true, LARGE_A);
    seeker("NORTH", false, LARGE_A);
    seeker("RIVER", false, LARGE_A);
    assertThat(reasons(Map.of()))
        .singleElement()
        .extracting(Reason::reason)
        .isEqualTo(
            "All 3 free helmets of Youth large in Model A go to other players:"
                + " 2 of higher urgency or waiting longer, 1 alike.");
  }

  @Test
  @DisplayName("what would help, and it does")
  void helps() {
    helmet("A1", LARGE_A);
    seeker("NORTH", true, LARGE_A);
    seeker("RIVER", false, LARGE_A);
    assertThat(reasons(Map.of()))
        .singleElement()
        .extracting(Reason::helps)
        .isEqualTo("1 more of Youth large in Model A at RIVER");
    helmets.add(new FreeHelmet("NEW", LARGE_A, "RIVER", 400));
    assertThat(reasons(Map.of())).isEmpty();
  }

  private List<Reason> reasons(Map<Kind, Map<String, Integer>> notFree) {
    Ways ways = new Ways(Map.of("NORTH", Map.of("RIVER", 16), "RIVER", Map.of("NORTH", 16)));
    Situation s = new Situation(seekers, helmets, ways, Set.of("NORTH", "RIVER"), Situations.NOW);
    Allotment found = Allocation.of(s, POLICY, new LeastCostFlow());
    return Reasons.of(s, POLICY, notFree, found);
  }

  private void helmet(String tag, Kind kind) {
    helmets.add(new FreeHelmet(tag, kind, "NORTH", 400));
  }

  private void seeker(String field, boolean mustNotWear, Kind... kinds) {
    seekers.add(
        new Seeker(
            new UUID(1, seekers.size()),
            field,
            mustNotWear,
            Situations.NOW.minus(Duration.ofDays(1)),
            Arrays.stream(kinds).map(k -> new Acceptable(k, Liking.ADVISED)).toList()));
  }
}
