package org.tapeline.fitting.phone;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.helmet.HelmetStanding;
import org.tapeline.fitting.session.FitSession;
import org.tapeline.fitting.session.FitSessionCommand;
import org.tapeline.fitting.session.FitSessionCommand.KnownHelmet;
import org.tapeline.fitting.session.FitSessionEvent.Conditions;

/**
 * A command as the phone will send it, with the facts that the service would look up: the phone
 * takes them from what it holds. Facts that it cannot hold (what another phone did) are looked at
 * when the command arrives.
 */
final class CommandJson {
  private CommandJson() {}

  /**
   * @param body what goes to the service, with {@code kind} (the end of its address) and {@code at}
   * @throws IllegalArgumentException for a kind that this phone does not know
   */
  static FitSessionCommand read(FitSession state, JsonIn body, JsonIn facts) {
    return switch (body.text("kind")) {
      case "open" -> open(body, facts);
      case "helmet" ->
          new FitSessionCommand.TryHelmet(
              tag(body.text("tag")),
              known(state, tag(body.text("tag")), facts),
              body.text("sizeLabel"),
              body.at("at"));
      case "checks" ->
          new FitSessionCommand.RecordCheck(
              body.text("check"),
              body.text("result").equals("pass"),
              body.optText("axis"),
              body.optText("finding"),
              body.optNumber("valueMm"),
              body.at("at"));
      case "adjustments" ->
          new FitSessionCommand.Adjust(
              body.text("check"), body.text("remedy"), body.optText("item"), body.at("at"));
      case "pass" -> pass(state, body, facts);
      case "fail" ->
          new FitSessionCommand.Fail(
              body.list("needs").stream().map(EventsJson::need).toList(),
              HereJson.read(state, facts),
              body.at("at"));
      case "passed-over" ->
          new FitSessionCommand.PassOver(
              body.text("check"),
              body.text("remedy"),
              body.optText("item"),
              body.text("why"),
              body.at("at"));
      case "corrections" ->
          new FitSessionCommand.Correct(
              body.text("check"), body.optText("remedy"), body.text("why"), body.at("at"));
      case "pause" -> new FitSessionCommand.Pause(body.at("at"));
      case "resume" -> new FitSessionCommand.Resume(facts.text("fitter"), body.at("at"));
      case "abandon" -> new FitSessionCommand.Abandon(body.text("why"), body.at("at"));
      default -> throw new IllegalArgumentException("This phone does not know " + body);
    };
  }

  static String tag(String typed) {
    return typed.toUpperCase(Locale.ROOT).replace(" ", "");
  }

  private static FitSessionCommand open(JsonIn body, JsonIn facts) {
    return new FitSessionCommand.Open(
        body.id("session"),
        body.id("player"),
        body.text("field"),
        facts.text("team"),
        facts.text("fitter"),
        EventsJson.advised(facts.list("advised")),
        body.at("at"));
  }

  private static FitSessionCommand pass(FitSession state, JsonIn body, JsonIn facts) {
    return new FitSessionCommand.Pass(
        state.helmet().flatMap(h -> known(state, h.tag(), facts)),
        body.texts("parts"),
        new Conditions(
            body.optNumber("airCelsius"), facts.optNumber("altitudeM"), body.optText("hair")),
        Optional.empty(),
        body.at("at"));
  }

  private static Optional<KnownHelmet> known(FitSession state, String tag, JsonIn facts) {
    return facts
        .opt("helmet")
        .filter(h -> h.text("tag").equals(tag))
        .map(
            h ->
                new KnownHelmet(
                    tag,
                    h.text("model"),
                    h.text("size"),
                    h.text("place"),
                    refusal(h, state.player(), facts)));
  }

  static Optional<String> refusal(JsonIn helmet, UUID player, JsonIn facts) {
    List<UUID> keptFor = helmet.texts("keptFor").stream().map(UUID::fromString).toList();
    return new HelmetStanding(
            helmet.text("state"),
            helmet.optText("holder").map(UUID::fromString),
            keptFor,
            helmet.optText("certifiedUntil").map(LocalDate::parse))
        .refusalFor(player, LocalDate.parse(facts.text("today")));
  }
}
