package org.tapeline.sizing.measurer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.measurer.TapeBias.Head;

@DisplayName("The bias of a tape")
class TapeBiasTest {

  @Test
  @DisplayName("is not known without heads")
  void none() {
    TapeBias bias = TapeBias.of(List.of());
    assertThat(bias.clear()).isFalse();
    assertThat(bias.heads()).isZero();
  }

  @Test
  @DisplayName("weighs each head by how much it says")
  void weighs() {
    TapeBias bias = TapeBias.of(List.of(new Head(6, 3), new Head(-20, 15)));
    // (6/9 - 20/225) / (1/9 + 1/225), and the root of one over the sum of the weights.
    assertThat(bias.mm()).isCloseTo(5, within(1e-9));
    assertThat(bias.errorMm()).isCloseTo(Math.sqrt(225.0 / 26), within(1e-9));
  }

  @Test
  @DisplayName("is clear only when it surely is more than 2 mm")
  void clear() {
    assertThat(TapeBias.of(Collections.nCopies(3, new Head(5, 3))).clear()).isFalse();
    assertThat(TapeBias.of(Collections.nCopies(12, new Head(5, 3))).clear()).isTrue();
    assertThat(TapeBias.of(Collections.nCopies(12, new Head(-5, 3))).clear()).isTrue();
    assertThat(TapeBias.of(Collections.nCopies(5_000, new Head(1.5, 3))).clear()).isFalse();
  }
}
