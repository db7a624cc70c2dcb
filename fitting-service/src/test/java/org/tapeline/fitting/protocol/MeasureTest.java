package org.tapeline.fitting.protocol;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A length that decides a check")
class MeasureTest {
  private static Measure of(double least, Optional<Double> most, Optional<String> over) {
    return new Measure("From here to there", least, most, "low", over, "invented");
  }

  private static Measure builtIn(String check) {
    return Protocols.builtIn().check(check).orElseThrow().measure().orElseThrow();
  }

  /**
   * 13 criteria (Yeargin et al., Annals of Biomedical Engineering 2021): 1 to 2 fingers; 7 criteria
   * (ASTM STP, 1997): 1 in, that is 25.4 mm. The width of a finger, 3/4 in: common practice, no
   * source.
   */
  @Test
  @DisplayName("above the eyebrows passes from one finger to two, an inch among them")
  void brow() {
    Measure brow = builtIn("brow-clearance");
    assertThat(brow.finding(18.9)).contains("low");
    assertThat(brow.finding(19)).isEmpty();
    assertThat(brow.finding(25.4)).isEmpty();
    assertThat(brow.finding(38)).isEmpty();
    assertThat(brow.finding(38.1)).contains("high");
    assertThat(brow.said()).isEqualTo("19 to 38 mm");
  }

  /** 7 criteria (ASTM STP, 1997): at least 2 in, that is 50.8 mm. */
  @Test
  @DisplayName("from the nose to the face guard passes from two inches on")
  void nose() {
    Measure nose = builtIn("nose-clearance");
    assertThat(nose.finding(50.7)).contains("tight");
    assertThat(nose.finding(50.8)).isEmpty();
    assertThat(nose.finding(90)).isEmpty();
    assertThat(nose.said()).isEqualTo("at least 50.8 mm");
  }

  @Test
  @DisplayName("has limits between which something passes and something fails")
  void limits() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(0, Optional.empty(), Optional.empty()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(500, Optional.empty(), Optional.empty()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(20, Optional.of(20.0), Optional.of("high")));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(20, Optional.of(30.0), Optional.empty()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> of(20, Optional.empty(), Optional.of("high")));
    assertThat(of(20.5, Optional.of(30.0), Optional.of("high")).said()).isEqualTo("20.5 to 30 mm");
  }
}
