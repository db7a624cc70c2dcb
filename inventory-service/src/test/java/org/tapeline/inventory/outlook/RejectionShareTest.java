package org.tapeline.inventory.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

@DisplayName("The share that reconditioners reject")
class RejectionShareTest {

  @ParameterizedTest(name = "{0} of {1}: {2} to {3}")
  @CsvSource({"0, 10, 0, .30850", "5, 10, .18709, .81291", "105, 147, .634021, .785694"})
  @DisplayName("is within the Clopper-Pearson bounds at 95 % (references, E)")
  void bounds(int rejected, int judged, double low, double high) {
    RejectionShare share = new RejectionShare(1, 19, rejected, judged);
    assertThat(share.countedLow()).isCloseTo(low, within(6e-6));
    assertThat(share.countedHigh()).isCloseTo(high, within(6e-6));
  }

  @Test
  @DisplayName("begins with what is assumed and follows what is counted")
  void learns() {
    assertThat(new RejectionShare(1, 19, 0, 0).mean()).isCloseTo(.05, within(1e-12));
    assertThat(new RejectionShare(1, 19, 30, 80).mean()).isCloseTo(.31, within(1e-12));
    assertThat(new RejectionShare(1, 19, 8, 8).countedHigh()).isEqualTo(1);
  }

  @Test
  @DisplayName("is spread over equally likely values with that mean")
  void spread() {
    RejectionShare share = new RejectionShare(2, 3, 0, 0);
    assertThat(Arrays.stream(share.spread(2000)).average().orElseThrow())
        .isCloseTo(.4, within(1e-4));
  }

  @Test
  @DisplayName("is not of more than were judged")
  void refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new RejectionShare(1, 19, 3, 2));
  }
}
