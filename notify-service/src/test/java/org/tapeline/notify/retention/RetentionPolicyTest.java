package org.tapeline.notify.retention;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The days that things are kept")
class RetentionPolicyTest {
  private static final Duration DAY = Duration.ofDays(1);

  @Test
  @DisplayName("are read from the file, and words outlive the links to them")
  void file() {
    RetentionPolicy policy = RetentionPolicyFile.read();
    assertThat(policy.outliving(Duration.ofDays(30))).isEqualTo(policy);
    assertThat(Keeping.of(policy)).extracting(Keeping::keptFor).allMatch(Duration::isPositive);
  }

  @Test
  @DisplayName("are refused when they are fewer than one, or words would go before links do")
  void refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RetentionPolicy(Duration.ofHours(23), DAY, DAY, DAY, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new RetentionPolicy(DAY, DAY, DAY, DAY, 0));
    RetentionPolicy briefly = new RetentionPolicy(DAY, DAY, DAY, DAY, 1);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> briefly.outliving(Duration.ofDays(2)))
        .withMessageContaining("tapeline.link.valid-for");
  }
}
