package org.tapeline.notify.unreached;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Moments;

/**
 * How people not reached are said on the staff's pages.
 *
 * @param zone of the times
 */
public record UnreachedWords(ZoneId zone) {
  private static final Map<String, String> WHY =
      Map.of(
          "no-address", "no address is known",
          "address-refused", "the address was refused",
          "message-refused", "the message was refused",
          "tries-used-up", "every try failed",
          "not-delivered", "it did not arrive",
          "not-confirmed", "sent, but not confirmed");
  private static final Map<String, String> HOW =
      Map.of(
          "mail", "mail",
          "text", "text message",
          "second-channel", "sent once more another way",
          "fitters", "fitters told",
          "manager", "equipment manager told");

  public String urgency(Unreached who) {
    return switch (who.urgency()) {
      case DO_NOT_WEAR -> "Do not wear";
      case SOON -> "Re-fit soon";
      case NORMAL -> "News";
    };
  }

  /** The shared colours of a state; the words stand beside. */
  public String tone(Unreached who) {
    return who.urgency() == Urgency.DO_NOT_WEAR ? "do-not-wear" : "check-today";
  }

  public String why(Unreached who) {
    return who.whys().stream()
        .map(code -> WHY.getOrDefault(code, code.replace('-', ' ')))
        .collect(Collectors.joining("; "));
  }

  public String tried(Unreached.Tried tried) {
    String how = HOW.getOrDefault(tried.how(), tried.how().replace('-', ' '));
    Optional<String> result = tried.result().map(outcome -> outcome.replace('-', ' '));
    return how + result.map(outcome -> ": " + outcome).orElse("");
  }

  public String time(Instant at) {
    return Moments.date(at, zone, Language.ENGLISH) + ", " + clock(at);
  }

  public String clock(Instant at) {
    return Moments.time(at, zone, Language.ENGLISH);
  }

  /** Such as {@code Mia, LV-0001, U10 Hawks}. */
  public String child(Unreached.Child child) {
    return child.number().isEmpty()
        ? child.firstName() + ", " + child.teamName()
        : child.firstName() + ", " + child.number() + ", " + child.teamName();
  }
}
