package org.tapeline.notify.channel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.notice.Urgency;

@DisplayName("The order of channels")
class ChannelPlanTest {
  private static final List<String> MAIL_FIRST = List.of("mail", "text");
  private static final Set<String> BOTH = Set.of("mail", "text");

  @Test
  @DisplayName("is the association's, of those on which an address is known")
  void known() {
    assertThat(ChannelPlan.of(MAIL_FIRST, List.of(), BOTH, Set.of())).isEqualTo(MAIL_FIRST);
    assertThat(ChannelPlan.of(MAIL_FIRST, List.of(), Set.of("text"), Set.of()))
        .containsExactly("text");
    assertThat(ChannelPlan.of(MAIL_FIRST, List.of(), Set.of(), Set.of())).isEmpty();
  }

  @Test
  @DisplayName("starts with what the person asked for and leaves nothing out")
  void wishes() {
    assertThat(ChannelPlan.of(MAIL_FIRST, List.of("text"), BOTH, Set.of()))
        .containsExactly("text", "mail");
  }

  @Test
  @DisplayName("ends with an address that bounced, which may be all there is")
  void bounced() {
    assertThat(ChannelPlan.of(MAIL_FIRST, List.of("mail"), BOTH, Set.of("mail")))
        .containsExactly("text", "mail");
    assertThat(ChannelPlan.of(MAIL_FIRST, List.of(), Set.of("mail"), Set.of("mail")))
        .containsExactly("mail");
  }

  @Test
  @DisplayName("comes from a file with a rule for every urgency; one with a gap is refused")
  void file() {
    ChannelPolicy policy = ChannelPolicyFile.read();
    assertThat(policy.of(Urgency.DO_NOT_WEAR).moveOnAfter())
        .isLessThan(policy.of(Urgency.NORMAL).moveOnAfter());
    assertThatIllegalArgumentException().isThrownBy(() -> new ChannelPolicy(Map.of()));
    Duration hour = Duration.ofHours(1);
    for (List<String> order :
        List.of(List.<String>of(), List.of("pigeon"), List.of("mail", "mail"))) {
      assertThatIllegalArgumentException().isThrownBy(() -> new ChannelPolicy.Rule(order, hour));
    }
  }
}
