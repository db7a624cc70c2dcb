package org.tapeline.inventory.reservation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A helmet that could be the replacement")
class CandidateTest {
  private static final LocalDate TODAY = LocalDate.of(2026, 8, 1);
  private static final SearchWeights WEIGHTS = SearchPolicy.read("/policy/search.json");

  private static Candidate at(String place, int minutes, int marks, int daysLeft) {
    return new Candidate(
        "LV1",
        place,
        place.equals("NORTH"),
        Optional.of(minutes),
        marks,
        Optional.of(TODAY.plusDays(daysLeft)));
  }

  private static double score(Candidate candidate) {
    return candidate.score(WEIGHTS, TODAY);
  }

  @Test
  @DisplayName("at the field is better than near, near than far, and far than a way nobody entered")
  void way() {
    Candidate unknown =
        new Candidate("LV1", "X", false, Optional.empty(), 0, Optional.of(TODAY.plusDays(400)));
    assertThat(score(at("NORTH", 0, 0, 400))).isZero().isLessThan(score(at("RIVER", 16, 0, 400)));
    assertThat(score(at("RIVER", 16, 0, 400))).isLessThan(score(at("SOUTH", 30, 0, 400)));
    assertThat(score(at("SOUTH", 30, 0, 400))).isLessThan(score(unknown));
  }

  @Test
  @DisplayName("with marks is worse than without, and with a certificate that ends soon too")
  void conditionAndCertification() {
    assertThat(score(at("NORTH", 0, 1, 400))).isEqualTo(20);
    assertThat(score(at("NORTH", 0, 50, 400))).isEqualTo(100);
    assertThat(score(at("NORTH", 0, 0, 365))).isZero();
    assertThat(score(at("NORTH", 0, 0, 265))).isEqualTo(50);
  }

  @Test
  @DisplayName("of which the certification is not known is no better than one that ends today")
  void unknownCertification() {
    Candidate unknown = new Candidate("LV1", "NORTH", true, Optional.empty(), 0, Optional.empty());
    assertThat(score(unknown)).isGreaterThanOrEqualTo(score(at("NORTH", 0, 0, 0)));
  }

  @Test
  @DisplayName("says in a sentence why it was chosen")
  void why() {
    assertThat(at("RIVER", 16, 2, 265).why(WEIGHTS, TODAY))
        .isEqualTo(
            "From RIVER, 16 minutes away, 2 marks reported, certified until Apr 23, 2027."
                + " It counts as 346 minutes (256 for the way, 40 for marks, 50 for its"
                + " certification), the fewest of all that were free.");
  }

  @Test
  @DisplayName("is weighed by data that are refused when an unknown certification would win")
  void badWeights() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SearchWeights(1, "practice", 240, 720, 20, 5, 365, 0.5, 100));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SearchWeights(1, "practice", -1, 720, 20, 5, 365, 0.5, 200));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new SearchWeights(1, "", 240, 720, 20, 5, 365, 0.5, 200));
  }
}
