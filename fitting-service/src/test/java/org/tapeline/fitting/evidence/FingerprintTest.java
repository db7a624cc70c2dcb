package org.tapeline.fitting.evidence;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The fingerprint of a sign-off")
class FingerprintTest {
  private static final Evidence FITTED = SomeEvidence.with("LV0001", Optional.of(25.0));

  @Test
  @DisplayName("is the same for the same facts, for as long as paper is kept")
  void stable() {
    assertThat(Fingerprint.of(FITTED).said()).isEqualTo("ea 4b 31 6c 40 82 67 aa d0 ee 2d 1c");
  }

  @Test
  @DisplayName("is another one when any fact is another one")
  void differs() {
    Evidence.Step tried = new Evidence.HelmetOn("LV0002", "m", "s", SomeEvidence.AT);
    assertThat(Fingerprint.of(SomeEvidence.with("LV0002", Optional.of(25.0))))
        .isNotEqualTo(Fingerprint.of(FITTED));
    assertThat(Fingerprint.of(SomeEvidence.with("LV0001", Optional.of(26.0))))
        .isNotEqualTo(Fingerprint.of(FITTED));
    assertThat(Fingerprint.of(SomeEvidence.with("LV0001", Optional.of(25.0), tried)))
        .isNotEqualTo(Fingerprint.of(FITTED));
  }

  @Test
  @DisplayName("cannot be kept by moving a letter from one fact to the next")
  void lengths() {
    Evidence.Step one = new Evidence.HelmetOn("LV1", "ab", "c", SomeEvidence.AT);
    Evidence.Step other = new Evidence.HelmetOn("LV1", "a", "bc", SomeEvidence.AT);
    assertThat(Fingerprint.facts(SomeEvidence.with("LV0001", Optional.empty(), one)))
        .isNotEqualTo(Fingerprint.facts(SomeEvidence.with("LV0001", Optional.empty(), other)));
  }

  @Test
  @DisplayName("is said in 12 groups of two digits")
  void groups() {
    assertThat(Fingerprint.of(FITTED).said()).matches("([0-9a-f]{2} ){11}[0-9a-f]{2}");
    assertThat(Fingerprint.of(Fingerprint.of(FITTED).bytes())).isEqualTo(Fingerprint.of(FITTED));
  }
}
