package org.tapeline.fitting.phone;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.fitting.session.FitSession;
import org.tapeline.fitting.session.Here;
import org.tapeline.fitting.session.Here.FreeHelmet;

/** What is at the field, as far as the phone was told when it last had signal. */
final class HereJson {
  private HereJson() {}

  static Here read(FitSession state, JsonIn facts) {
    Map<String, Integer> parts = new HashMap<>();
    facts.opt("parts").ifPresent(p -> p.names().forEach(item -> parts.put(item, p.whole(item))));
    Map<String, List<String>> sizes = new HashMap<>();
    facts
        .opt("models")
        .ifPresent(m -> m.names().forEach(model -> sizes.put(model, m.texts(model))));
    return new Here(
        parts,
        helmets(state, facts),
        sizes,
        EventsJson.advised(facts.list("advisedNow")),
        facts.optText("measuredAt").map(java.time.Instant::parse));
  }

  private static List<FreeHelmet> helmets(FitSession state, JsonIn facts) {
    return facts.list("shelf").stream()
        .filter(h -> CommandJson.refusal(h, state.player(), facts).isEmpty())
        .map(h -> free(h, state.player()))
        .toList();
  }

  private static FreeHelmet free(JsonIn h, UUID player) {
    String own = player.toString();
    boolean kept = h.texts("keptFor").contains(own) || h.text("holder").equals(own);
    return new FreeHelmet(h.text("tag"), h.text("model"), h.text("size"), kept);
  }
}
