package org.tapeline.notify.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.notice.CauseName.Recipient;

@DisplayName("The table of causes")
class CauseTableTest {
  private static final CauseTable TABLE = CauseTableFile.read();
  private static final CauseRule STOP = TABLE.of(CauseName.REFIT_DO_NOT_WEAR);

  private static CauseRule stop(
      Set<Recipient> to, Urgency urgency, Duration window, List<NoticeKind> overtakenBy) {
    return new CauseRule(
        STOP.cause(),
        STOP.when(),
        STOP.kind(),
        to,
        Optional.ofNullable(urgency),
        window,
        STOP.household(),
        overtakenBy,
        false);
  }

  @Test
  @DisplayName("says something of every cause, and nothing twice")
  void complete() {
    assertThat(TABLE.rules()).extracting(CauseRule::cause).containsExactly(CauseName.values());
    List<CauseRule> gap = new ArrayList<>(TABLE.rules());
    gap.removeFirst();
    assertThatIllegalArgumentException().isThrownBy(() -> new CauseTable(1, gap));
    List<CauseRule> twice = new ArrayList<>(TABLE.rules());
    twice.add(STOP);
    assertThatIllegalArgumentException().isThrownBy(() -> new CauseTable(1, twice));
  }

  @Test
  @DisplayName("cannot make \"do not wear\" late, less urgent, silent or outdated by a date")
  void safety() {
    Set<Recipient> guardians = Set.of(Recipient.GUARDIANS);
    Duration now = Duration.ZERO;
    Urgency most = Urgency.DO_NOT_WEAR;
    assertThat(stop(guardians, most, now, List.of()).window()).isEqualTo(now);
    assertThatIllegalArgumentException()
        .isThrownBy(() -> stop(guardians, most, Duration.ofSeconds(4), List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> stop(guardians, Urgency.SOON, now, List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> stop(guardians, null, now, List.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> stop(Set.of(), most, now, List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> stop(guardians, most, now, List.of(NoticeKind.REFIT_DATE)));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> stop(Set.of(Recipient.DEPOT), most, now, List.of()));
  }

  @Test
  @DisplayName("has windows that settings can shorten and never lengthen")
  void windows() {
    assertThat(TABLE.window(CauseName.REFIT_SOON, Duration.ofSeconds(1))).hasSeconds(1);
    assertThat(TABLE.window(CauseName.REFIT_DO_NOT_WEAR, Duration.ofDays(1))).hasSeconds(3);
  }
}
