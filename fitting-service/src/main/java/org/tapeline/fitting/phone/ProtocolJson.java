package org.tapeline.fitting.phone;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Fittings;
import org.tapeline.fitting.protocol.Measure;
import org.tapeline.fitting.protocol.Otherwise;
import org.tapeline.fitting.protocol.Protocol;
import org.tapeline.fitting.protocol.Remedy;

/** The protocol as the service sends it; checked again by its own constructor. */
final class ProtocolJson {
  private ProtocolJson() {}

  static Protocol read(String text) {
    JsonIn json = JsonIn.read(text);
    Map<String, Fittings> models = new HashMap<>();
    json.opt("models").ifPresent(m -> m.names().forEach(n -> models.put(n, fittings(m.opt(n)))));
    return new Protocol(
        json.text("id"),
        json.whole("version"),
        json.text("title"),
        json.whole("hoursAnswersHold"),
        json.list("checks").stream().map(ProtocolJson::check).toList(),
        fittings(json.opt("usual")),
        models);
  }

  private static Fittings fittings(Optional<JsonIn> json) {
    JsonIn known = json.orElseThrow();
    Map<String, String> fitted = new HashMap<>();
    known.opt("fitted").ifPresent(f -> f.names().forEach(slot -> fitted.put(slot, f.text(slot))));
    return new Fittings(Set.copyOf(known.texts("has")), fitted);
  }

  private static Check check(JsonIn json) {
    return new Check(
        json.text("id"),
        json.text("question"),
        json.text("how"),
        json.text("pass"),
        json.text("axis"),
        Check.Severity.valueOf(json.text("severity")),
        json.text("source"),
        json.list("ways").stream().map(ProtocolJson::way).toList(),
        json.opt("measure").map(ProtocolJson::measure));
  }

  private static Measure measure(JsonIn json) {
    return new Measure(
        json.text("what"),
        json.optNumber("leastMm").orElseThrow(),
        json.optNumber("mostMm"),
        json.text("under"),
        json.optText("over"),
        json.text("source"));
  }

  private static Check.Way way(JsonIn json) {
    JsonIn otherwise = json.opt("otherwise").orElseThrow();
    Optional<Otherwise.Helmet> helmet = otherwise.optText("helmet").map(Otherwise.Helmet::valueOf);
    return new Check.Way(
        json.text("finding"),
        json.text("said"),
        json.list("remedies").stream().map(ProtocolJson::remedy).toList(),
        new Otherwise(helmet, otherwise.optText("part")));
  }

  private static Remedy remedy(JsonIn json) {
    return new Remedy(
        json.text("id"),
        json.text("text"),
        json.texts("voids"),
        json.texts("items"),
        json.opt("step").map(s -> new Remedy.Step(s.text("slot"), s.whole("by"))),
        json.opt("turn")
            .map(t -> new Remedy.Turn(t.text("quantity"), t.whole("by"), t.whole("most"))),
        json.optText("only"),
        json.list("care").stream()
            .map(c -> new Remedy.Care(c.text("id"), c.text("text")))
            .toList());
  }
}
