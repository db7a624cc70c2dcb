package org.tapeline.fitting.evidence;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Remedy;
import org.tapeline.fitting.roster.Words;
import org.tapeline.fitting.session.FitSessionEvent.Conditions;

/** The codes of the record in words, by the protocol in force when the sheet is printed. */
record SheetWords(Protocol protocol) {

  String check(String id) {
    return protocol.check(id).isPresent() ? protocol.question(id) : Words.item(id);
  }

  String step(Evidence.Step step) {
    return switch (step) {
      case Evidence.HelmetOn s ->
          "Put on " + s.tag() + ", " + Words.model(s.model()) + " " + Words.size(s.size());
      case Evidence.Failed s ->
          check(s.check())
              + ": failed"
              + finding(s)
              + s.valueMm().map(v -> ", " + mm(v)).orElse("");
      case Evidence.Remedied s ->
          "Remedy: "
              + remedy(s.remedy())
              + s.item().map(item -> " (" + Words.item(item) + ")").orElse("");
      case Evidence.PassedOver s ->
          "Not possible: "
              + remedy(s.remedy())
              + s.item().map(item -> " (" + Words.item(item) + ")").orElse("")
              + (s.why().equals("no-part") ? ", there was none" : "");
      case Evidence.TakenBack s ->
          "Taken back as a mistake ("
              + s.why().replace('-', ' ')
              + "): "
              + s.remedy().map(this::remedy).orElse(check(s.check()));
      case Evidence.Aside s -> "Put aside";
      case Evidence.InHandsOf s -> "Gone on by " + s.fitter();
    };
  }

  private String finding(Evidence.Failed s) {
    return s.finding()
        .map(
            code ->
                protocol
                    .check(s.check())
                    .flatMap(c -> c.way(code))
                    .map(way -> way.said())
                    .orElse(code))
        .map(said -> " (" + said + ")")
        .orElse("");
  }

  private String remedy(String id) {
    return protocol.remedies().stream()
        .filter(r -> r.id().equals(id))
        .map(Remedy::text)
        .findFirst()
        .orElse(Words.item(id));
  }

  static String answer(Evidence.Answer answer) {
    return answer.result().equals("pass") ? "Passed" : Words.item(answer.result());
  }

  static String measured(Evidence.Answer answer) {
    return answer.valueMm().map(SheetWords::mm).orElse("");
  }

  private static String mm(double value) {
    return number(value) + " mm";
  }

  static String parts(Evidence e) {
    return e.parts().isEmpty()
        ? "none recorded"
        : e.parts().stream().map(Words::item).collect(Collectors.joining(", "));
  }

  /** What was done to the air of the liner in this session, on the helmet that was signed off. */
  String liner(Evidence e) {
    int more = 0;
    int less = 0;
    boolean onThisHelmet = false;
    for (Evidence.Step step : e.steps()) {
      if (step instanceof Evidence.HelmetOn on) {
        onThisHelmet = on.tag().equals(e.tag());
      } else if (step instanceof Evidence.Remedied r && onThisHelmet) {
        int turned = airOf(r.remedy());
        more += Math.max(0, turned);
        less += Math.max(0, -turned);
      }
    }
    boolean holds = e.answers().stream().anyMatch(a -> a.check().equals("liner-air"));
    return "air added "
        + times(more)
        + ", let out "
        + times(less)
        + " in this session"
        + (holds ? "; it holds its air, see the checks" : "");
  }

  private int airOf(String id) {
    return protocol.remedies().stream()
        .filter(r -> r.id().equals(id))
        .flatMap(r -> r.turn().stream())
        .filter(t -> t.quantity().equals("liner-air"))
        .mapToInt(Remedy.Turn::by)
        .sum();
  }

  private static String times(int n) {
    return n == 1 ? "once" : n == 0 ? "not at all" : n + " times";
  }

  static String air(Conditions c) {
    return c.airCelsius()
        .map(t -> number(t) + " °C (" + Math.round(t * 9 / 5 + 32) + " °F)")
        .orElse("not recorded");
  }

  static String altitude(Conditions c) {
    return c.altitudeM()
        .map(m -> number(m) + " m (" + Math.round(m / 0.3048) + " ft)")
        .orElse("not recorded");
  }

  static String hair(Conditions c) {
    return c.hair().orElse("not recorded");
  }

  private static String number(double value) {
    return value == Math.rint(value)
        ? Long.toString(Math.round(value))
        : String.format(Locale.US, "%.1f", value);
  }

  /** Empty when the words are those of the protocol that was worked through. */
  Optional<String> otherWording(Evidence e) {
    boolean same = protocol.id().equals(e.protocol()) && protocol.version() == e.protocolVersion();
    return same
        ? Optional.empty()
        : Optional.of(
            "The checks are worded as in version "
                + protocol.version()
                + " of the protocol, in force when this was printed.");
  }
}
