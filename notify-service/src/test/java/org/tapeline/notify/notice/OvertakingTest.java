package org.tapeline.notify.notice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.notify.notice.NoticeKind.DO_NOT_WEAR_REFIT;
import static org.tapeline.notify.notice.NoticeKind.FITTED_AGAIN;
import static org.tapeline.notify.notice.NoticeKind.REFIT_CHANGED;
import static org.tapeline.notify.notice.NoticeKind.REFIT_DATE;
import static org.tapeline.notify.notice.NoticeKind.REFIT_UNBOOKED;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A notice that waits")
class OvertakingTest {
  private static final Instant NOW = Instant.parse("2025-09-12T17:00:00Z");

  private static final Instant RAISED = NOW.minusSeconds(3600);

  private static final CauseTable TABLE = CauseTableFile.read();

  private static boolean overtaken(NoticeKind kind, Instant slot, NoticeKind... later) {
    NoticeOfCase one =
        new NoticeOfCase(kind, false, true, Optional.ofNullable(slot), Optional.of("NORTH"));
    return Overtaking.overtaken(one, RAISED, List.of(later), NOW, TABLE);
  }

  @Test
  @DisplayName("means nothing any more once the helmet is fitted again")
  void fitted() {
    assertThat(overtaken(DO_NOT_WEAR_REFIT, null, REFIT_DATE, FITTED_AGAIN)).isTrue();
    assertThat(overtaken(FITTED_AGAIN, null)).isFalse();
  }

  @Test
  @DisplayName("of a date is overtaken by later news of the date and by the date itself")
  void dates() {
    Instant tomorrow = NOW.plusSeconds(86_400);
    assertThat(overtaken(REFIT_DATE, tomorrow)).isFalse();
    assertThat(overtaken(REFIT_DATE, tomorrow, REFIT_CHANGED)).isTrue();
    assertThat(overtaken(REFIT_UNBOOKED, null, REFIT_DATE)).isTrue();
    assertThat(overtaken(REFIT_CHANGED, NOW.minusSeconds(1))).isTrue();
    assertThat(overtaken(REFIT_CHANGED, RAISED.minusSeconds(1))).isFalse();
  }

  @Test
  @DisplayName("that says do not wear is never overtaken by a date")
  void doNotWear() {
    assertThat(overtaken(DO_NOT_WEAR_REFIT, NOW.minusSeconds(1), REFIT_CHANGED)).isFalse();
  }
}
