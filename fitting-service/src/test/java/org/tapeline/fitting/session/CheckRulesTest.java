package org.tapeline.fitting.session;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.fitting.session.ASession.AT;
import static org.tapeline.fitting.session.ASession.PLAYER;
import static org.tapeline.fitting.session.ASession.SESSION;
import static org.tapeline.fitting.session.ASession.TAG;
import static org.tapeline.fitting.session.ASession.adjust;
import static org.tapeline.fitting.session.ASession.failed;
import static org.tapeline.fitting.session.ASession.helmetOn;
import static org.tapeline.fitting.session.ASession.opened;
import static org.tapeline.fitting.session.ASession.passed;
import static org.tapeline.fitting.session.ASession.putOn;
import static org.tapeline.fitting.session.SmallProtocol.NOSE;
import static org.tapeline.fitting.session.SmallProtocol.SCREWS;
import static org.tapeline.fitting.session.SmallProtocol.SNUG;

import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.session.FitSessionCommand.RecordCheck;
import org.tapeline.fitting.session.FitSessionEvent.CheckRecorded;

@DisplayName("The answer to a check")
class CheckRulesTest {

  private static RecordCheck fails(Optional<String> axis, Optional<String> finding) {
    return new RecordCheck(SNUG, false, axis, finding, Optional.empty(), AT);
  }

  private static RecordCheck measured(double mm) {
    return new RecordCheck(NOSE, true, Optional.empty(), Optional.empty(), Optional.of(mm), AT);
  }

  private static CheckRecorded recorded(
      String check, String result, Optional<String> axis, Optional<String> finding) {
    return new CheckRecorded(SESSION, PLAYER, check, result, axis, finding, Optional.empty(), AT);
  }

  @Test
  @DisplayName("to no check of the protocol is refused, with and without a helmet")
  void unknown() {
    assertThat(helmetOn().refusal(passed("comfort"))).isEqualTo("check-unknown");
    assertThat(opened().refusal(passed("comfort"))).isEqualTo("check-unknown");
  }

  @Test
  @DisplayName("needs a helmet on the head")
  void noHelmet() {
    assertThat(opened().refusal(passed(SNUG))).isEqualTo("no-helmet");
  }

  @Test
  @DisplayName("that passes says neither axis nor finding, whatever was sent")
  void pass() {
    RecordCheck sent =
        new RecordCheck(
            SNUG, true, Optional.of("sides"), Optional.of("loose"), Optional.empty(), AT);
    assertThat(helmetOn().event(sent))
        .isEqualTo(recorded(SNUG, "pass", Optional.empty(), Optional.empty()));
  }

  @Test
  @DisplayName("that fails says the finding and is about the check's own axis")
  void fail() {
    assertThat(helmetOn().event(failed(SNUG, "loose")))
        .isEqualTo(recorded(SNUG, "fail", Optional.of("sides"), Optional.of("loose")));
  }

  @Test
  @DisplayName("that fails may be about another axis")
  void axis() {
    RecordCheck answer = fails(Optional.of("front-back"), Optional.of("loose"));
    assertThat(helmetOn().event(answer))
        .isEqualTo(recorded(SNUG, "fail", Optional.of("front-back"), Optional.of("loose")));
    assertThat(helmetOn().refusal(fails(Optional.of("up"), Optional.of("loose"))))
        .isEqualTo("axis");
  }

  @Test
  @DisplayName("that fails is recorded without a finding too: what was seen counts at once")
  void findingMissing() {
    assertThat(helmetOn().event(fails(Optional.empty(), Optional.empty())))
        .isEqualTo(recorded(SNUG, "fail", Optional.of("sides"), Optional.empty()));
  }

  @Test
  @DisplayName("with a finding of no known word is refused")
  void findingUnknown() {
    assertThat(helmetOn().refusal(failed(SNUG, "wobbly"))).isEqualTo("finding");
  }

  @Test
  @DisplayName("may carry a length from 0 to 500 mm and no other number")
  void value() {
    for (double mm : new double[] {0, 51, 500}) {
      CheckRecorded event = (CheckRecorded) helmetOn().event(measured(mm));
      assertThat(event.valueMm()).contains(mm);
    }
    for (double mm : new double[] {-0.1, 500.1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThat(helmetOn().refusal(measured(mm))).as("%s mm", mm).isEqualTo("value");
    }
  }

  @Test
  @DisplayName("can be changed when the fit was looked at again")
  void again() {
    ASession session = helmetOn().with(failed(SNUG, "loose")).with(passed(SNUG));
    assertThat(session.state().passed(SNUG)).isTrue();
    assertThat(session.with(failed(SNUG, "tight")).state().finding(SNUG)).isEqualTo("tight");
  }

  @Test
  @DisplayName("of a helmet at fault stands until a remedy was applied")
  void standsUntilMended() {
    ASession session = helmetOn().with(failed(SCREWS, "loose"));
    assertThat(session.refusal(passed(SCREWS))).isEqualTo("not-mended");
    session.with(adjust(SCREWS, "kit")).with(passed(SCREWS));
    assertThat(session.state().passed(SCREWS)).isTrue();
  }

  @Test
  @DisplayName("of a helmet at fault is not washed off by another helmet in between")
  void standsThroughAChange() {
    ASession session =
        helmetOn().with(failed(SCREWS, "damaged")).with(putOn("LV0002")).with(putOn(TAG));
    assertThat(session.refusal(passed(SCREWS))).isEqualTo("not-mended");
  }
}
