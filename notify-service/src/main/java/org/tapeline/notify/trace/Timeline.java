package org.tapeline.notify.trace;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.tapeline.notify.words.TradeWords;

/**
 * What happened to a notice, in order of time: its causes, its events, the tries, what the text
 * gateway said later. An event of a type that nobody knows here is told by its name and its fields.
 */
final class Timeline {
  private static final String HERE = "notify";

  /** Said at the top of the page, or ids that say nothing to a reader. */
  private static final Set<String> SAID_ELSEWHERE =
      Set.of(
          "notice",
          "recipient",
          "at",
          "kind",
          "urgency",
          "players",
          "causes",
          "refitCase",
          "template",
          "templateVersion",
          "language");

  private Timeline() {}

  static List<Moment> of(Trace trace) {
    List<Moment> moments = new ArrayList<>();
    trace.causes().forEach(cause -> moments.add(cause(cause)));
    trace.events().forEach(event -> moments.add(event(event)));
    trace.tries().forEach(one -> moments.add(tried(one)));
    trace.textMessages().forEach(message -> moments.add(message(message)));
    trace.bounces().forEach(bounce -> moments.add(bounce(bounce)));
    // Sorting is stable: what is of one moment stays in the order above.
    moments.sort(
        Comparator.comparing(Moment::at, Comparator.nullsFirst(Comparator.naturalOrder())));
    return List.copyOf(moments);
  }

  private static Moment cause(Trace.CauseEvent cause) {
    return cause.type() == null
        ? new Moment(null, "cause", "Cause", "no more is known of it", "", cause.id())
        : new Moment(
            cause.at(), "cause", "Cause: " + words(cause.type()), "", cause.service(), cause.id());
  }

  private static Moment event(Trace.Recorded event) {
    return new Moment(
        event.at(), "event", words(event.type()), fields(event.data()), HERE, event.id());
  }

  private static Moment tried(Trace.Try one) {
    return new Moment(
        one.startedAt(),
        "try",
        "Try " + one.number() + " by " + one.channel(),
        outcome(one),
        HERE,
        null);
  }

  private static String outcome(Trace.Try one) {
    if (one.outcome() == null) {
      return "runs, or was cut off";
    }
    String after = one.outcome() + " after " + seconds(one.startedAt(), one.endedAt());
    return one.code() == null ? after : after + ", " + one.code();
  }

  private static String seconds(Instant from, Instant to) {
    return String.format(Locale.ROOT, "%.2f s", Duration.between(from, to).toMillis() / 1000.0);
  }

  private static Moment message(Trace.TextMessage message) {
    String what = "Text message " + message.number() + ": " + message.state();
    return new Moment(message.changedAt(), "receipt", what, "", HERE, null);
  }

  private static Moment bounce(Trace.Bounce bounce) {
    String what = "The address for " + bounce.channel() + " was refused for good";
    return new Moment(bounce.at(), "bounce", what, bounce.code(), HERE, null);
  }

  /** {@code org.tapeline.fitting.refit-opened.v1} becomes {@code Re-fit opened}. */
  static String words(String type) {
    String name = type.replaceFirst("\\.v[0-9]+$", "").replaceFirst("^.*\\.", "");
    return TradeWords.title(name);
  }

  /** {@code channel mail, attempt 1}. */
  private static String fields(JsonNode data) {
    return data.properties().stream()
        .filter(field -> field.getValue().isValueNode() && !field.getValue().isNull())
        .filter(field -> !SAID_ELSEWHERE.contains(field.getKey()))
        .map(Timeline::field)
        .collect(Collectors.joining(", "));
  }

  private static String field(Map.Entry<String, JsonNode> field) {
    String name = field.getKey().replaceAll("([A-Z])", " $1").toLowerCase(Locale.ROOT);
    return name + " " + field.getValue().asText();
  }
}
