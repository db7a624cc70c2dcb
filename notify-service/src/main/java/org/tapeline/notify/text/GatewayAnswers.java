package org.tapeline.notify.text;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import org.tapeline.notify.channel.SendOutcome;

/** Reads what a gateway's answer means (RFC 9110, section 15; 429: RFC 6585). */
final class GatewayAnswers {
  private static final Duration USUAL_PAUSE = Duration.ofSeconds(5);

  private GatewayAnswers() {}

  /**
   * @param id what the gateway calls the message, where it says so
   * @param retryAfter the header, if there was one
   */
  static SendOutcome of(int status, Optional<String> id, Optional<String> retryAfter, Instant now) {
    String code = Integer.toString(status);
    return switch (status) {
      case 401, 403 -> new SendOutcome.Down(code); // Our key: no reason to give up on a person.
      case 408, 409, 425 -> new SendOutcome.Failed(code); // 409: the first try is still at work.
      case 429 -> new SendOutcome.Busy(code, pause(retryAfter, now));
      case 503 ->
          retryAfter.isPresent()
              ? new SendOutcome.Busy(code, pause(retryAfter, now))
              : new SendOutcome.Down(code);
      default -> byClass(status, code, id);
    };
  }

  private static SendOutcome byClass(int status, String code, Optional<String> id) {
    return switch (status / 100) {
      case 2 -> new SendOutcome.Taken(id);
      case 4 -> new SendOutcome.MessageRefused(code);
      default -> new SendOutcome.Down(code);
    };
  }

  /** Seconds or a date (RFC 9110, section 10.2.3). */
  private static Duration pause(Optional<String> retryAfter, Instant now) {
    String text = retryAfter.map(String::strip).orElse("");
    if (text.matches("[0-9]{1,9}")) {
      return Duration.ofSeconds(Long.parseLong(text));
    }
    try {
      Instant until = ZonedDateTime.parse(text, DateTimeFormatter.RFC_1123_DATE_TIME).toInstant();
      return until.isAfter(now) ? Duration.between(now, until) : Duration.ZERO;
    } catch (DateTimeException e) {
      return USUAL_PAUSE;
    }
  }
}
