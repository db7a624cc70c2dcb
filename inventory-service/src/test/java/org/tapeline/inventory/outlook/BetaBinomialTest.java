package org.tapeline.inventory.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("How many of a batch are rejected")
class BetaBinomialTest {

  @Test
  @DisplayName("has the chances of the beta-binomial for n 5, a 2, b 3 (references, E)")
  void reference() {
    assertThat(BetaBinomial.chances(5, 2, 3))
        .containsExactly(
            new double[] {.166667, .238095, .238095, .190476, .119048, .047619}, within(5e-7));
  }

  @Test
  @DisplayName("sums to one, also for a whole fleet, and is none of none")
  void sums() {
    double[] many = BetaBinomial.chances(20_000, 3, 57);
    assertThat(Arrays.stream(many).sum()).isCloseTo(1, within(1e-9));
    assertThat(BetaBinomial.chances(0, 2, 3)).containsExactly(1);
  }

  @Test
  @DisplayName("has the quantiles by the sums of its chances")
  void quantiles() {
    double[] chances = BetaBinomial.chances(5, 2, 3);
    assertThat(BetaBinomial.quantile(chances, .05)).isZero();
    assertThat(BetaBinomial.quantile(chances, .5)).isEqualTo(2);
    assertThat(BetaBinomial.quantile(chances, .95)).isEqualTo(4);
  }

  @Test
  @DisplayName("is refused without a share that can be")
  void refused() {
    assertThatIllegalArgumentException().isThrownBy(() -> BetaBinomial.chances(-1, 1, 1));
    assertThatIllegalArgumentException().isThrownBy(() -> BetaBinomial.chances(1, 0, 1));
  }
}
