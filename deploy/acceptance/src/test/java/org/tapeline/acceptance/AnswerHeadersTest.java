package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a browser is told of every kind of answer. */
@DisplayName("Every answer")
class AnswerHeadersTest {
  @ParameterizedTest(name = "{2}: {1}")
  @CsvSource({
    "manager, /sizing/players, text/html, no-store",
    "manager, /sizing/api/players, application/json, no-store",
    "manager, /fitting/fit-days.ics, text/calendar, no-store",
    "manager, /inventory/helmets.csv, text/csv, no-store",
    "manager, /notify/files/notices/notices.csv, text/csv, no-store",
    "manager, /notify/files/notices/notices.json, application/json, no-store",
    "manager, /notify/teams/U10-HAWKS/sheet.pdf, application/pdf, no-store",
    "manager, /inventory/restock/picklist/paper.pdf, application/pdf, no-store",
    "manager, /fitting/sideline/live, text/event-stream, no-store",
    "manager, /chains/0199c8f0-0000-7000-8000-000000000001, application/json, no-store",
    "manager, /sizing/api/players/none, application/problem+json, no-store",
    "depot, /sizing/players, text/html, no-store",
    "'', /sizing/players, '', no-store",
    "'', /sizing/api/players, application/problem+json, no-store",
    "'', /notify/n/none, text/html, no-store",
    "'', /notify/guidance/en, text/html, no-store",
    "'', /fitting/slot/none, text/html, no-store",
    "'', /sign-in, text/html, no-store",
    "'', /no-such-page, text/html, no-store",
    "'', /mailbox, text/html, no-store",
    "'', /assets/tapeline.css, text/css, no-cache",
    "'', /assets/tapeline.svg, image/svg+xml, no-cache",
    "'', /assets/tables.js, text/javascript, no-cache",
    "'', /fitting/field/, text/html, no-cache"
  })
  @DisplayName("says who may frame it, what may run in it, what is told of it and who keeps it")
  void guarded(String user, String path, String type, String kept) {
    Map<String, String> headers = new HashMap<>();
    headers.put("Accept", path.contains("/api/") || path.contains("/chains") ? JSON : ANY);
    if (!user.isEmpty()) {
      headers.put("Authorization", Raw.login(user));
    }
    Raw.Answer answer = Raw.get(path, headers);
    assertThat(answer.type()).isEqualTo(type);
    assertThat(answer.header("Content-Security-Policy"))
        .contains("default-src", "frame-ancestors", "form-action", "base-uri")
        .doesNotContain("unsafe-eval", "script-src 'unsafe-inline'", "*");
    assertThat(answer.header("X-Content-Type-Options")).isEqualTo("nosniff");
    assertThat(answer.header("Referrer-Policy")).isIn("same-origin", "no-referrer");
    assertThat(answer.header("Cache-Control")).isEqualTo(kept);
  }

  private static final String JSON = "application/json";
  private static final String ANY = "text/html, */*;q=0.5";
}
