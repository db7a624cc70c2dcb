package org.tapeline.notify.trace;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.journal.EventJson;

@DisplayName("A notice's time line")
class TimelineTest {
  private static final UUID ID = UUID.fromString("018f3c5e-7a10-7c3d-8a55-2f0e9b1c7d21");
  private static final Instant T0 = Instant.parse("2025-09-12T17:00:00Z");

  private static Trace trace(
      List<Trace.CauseEvent> causes, List<Trace.Recorded> events, List<Trace.Try> tries) {
    NoticeLine line =
        new NoticeLine(
            ID,
            "refit-date",
            "soon",
            "sent",
            null,
            "mail",
            "depot",
            "en",
            "refit-date",
            2,
            1,
            T0,
            T0,
            T0,
            T0,
            null,
            ID);
    return new Trace(line, List.of(), causes, events, tries, List.of(), List.of());
  }

  private static Trace.Recorded event(String name, long second, Map<String, Object> data) {
    JsonNode json = EventJson.MAPPER.valueToTree(data);
    return new Trace.Recorded(
        ID, 1, "org.tapeline.notify." + name + ".v1", T0.plusSeconds(second), ID, json);
  }

  @Test
  @DisplayName("tells causes, events and tries in order of time")
  void order() {
    Trace trace =
        trace(
            List.of(
                new Trace.CauseEvent(
                    ID, "org.tapeline.fitting.refit-opened.v1", "fitting", "refit-1", T0, ID)),
            List.of(
                event("notice-raised", 1, Map.of("kind", "refit-date")),
                event("notice-sent", 3, Map.of("channel", "mail"))),
            List.of(
                new Trace.Try(1, "mail", T0.plusSeconds(2), T0.plusMillis(2120), "taken", null)));
    assertThat(Timeline.of(trace))
        .extracting(m -> m.what() + " | " + m.detail())
        .containsExactly(
            "Cause: Re-fit opened | ",
            "Notice raised | ",
            "Try 1 by mail | taken after 0.12 s",
            "Notice sent | channel mail");
  }

  @Test
  @DisplayName("tells an event that nobody knows here by its name and its fields")
  void unknown() {
    Trace trace =
        trace(
            List.of(), List.of(event("notice-escalated", 1, Map.of("toWhom", "coach"))), List.of());
    assertThat(Timeline.of(trace).getFirst())
        .isEqualTo(
            new Moment(
                T0.plusSeconds(1), "event", "Notice escalated", "to whom coach", "notify", ID));
  }

  @Test
  @DisplayName("says so when a cause is not known any more, or a try has no end")
  void notKnown() {
    Trace trace =
        trace(
            List.of(new Trace.CauseEvent(ID, null, null, null, null, null)),
            List.of(),
            List.of(new Trace.Try(2, "text", T0, null, null, null)));
    assertThat(Timeline.of(trace))
        .extracting(Moment::detail)
        .containsExactly("no more is known of it", "runs, or was cut off");
  }

  @Test
  @DisplayName("tells what the text gateway said later, and that an address is refused")
  void receipts() {
    Trace plain = trace(List.of(), List.of(), List.of());
    Trace trace =
        new Trace(
            plain.notice(),
            List.of(),
            List.of(),
            List.of(event("notice-moved-on", 1, Map.of("why", "address-refused"))),
            List.of(new Trace.Try(1, "mail", T0, T0.plusMillis(500), "refused", "550 5.1.1")),
            List.of(new Trace.TextMessage(1, "delivered", T0.plusSeconds(9))),
            List.of(new Trace.Bounce("mail", "550 5.1.1", T0.plusMillis(500))));
    assertThat(Timeline.of(trace))
        .extracting(m -> m.sort() + " | " + m.what() + " | " + m.detail())
        .containsExactly(
            "try | Try 1 by mail | refused after 0.50 s, 550 5.1.1",
            "bounce | The address for mail was refused for good | 550 5.1.1",
            "event | Notice moved on | why address-refused",
            "receipt | Text message 1: delivered | ");
  }

  @Test
  @DisplayName("is a file for a spreadsheet in which nothing is a formula")
  void formulas() throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (CsvWriter csv = new CsvWriter(out, List.of("a", "b", "c"))) {
      csv.row(Arrays.asList("=1+1", null, -3));
      csv.row(Arrays.asList("@x", "+1", "a,\"b\""));
    }
    assertThat(out.toString(StandardCharsets.UTF_8))
        .isEqualTo("a,b,c\r\n'=1+1,,-3\r\n'@x,'+1,\"a,\"\"b\"\"\"\r\n");
  }
}
