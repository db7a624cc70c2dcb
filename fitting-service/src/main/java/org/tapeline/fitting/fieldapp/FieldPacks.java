package org.tapeline.fitting.fieldapp;

import com.fasterxml.jackson.core.JsonProcessingException;
import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.fitting.part.PartsAt;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.roster.ModelSize;
import org.tapeline.fitting.roster.Words;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Puts together what a fitter takes along. */
@ApplicationScoped
public class FieldPacks {
  /** Beyond that a phone is the wrong thing to hold it: an association has hundreds of fields. */
  private static final int MOST_FIELDS = 12;

  private final Protocols protocols;
  private final FieldPlayers players;
  private final FieldHelmets helmets;
  private final OpenSessions sessions;
  private final Caller caller;
  private final Clock clock;
  private final Duration wearStateHolds;

  FieldPacks(
      Protocols protocols,
      FieldPlayers players,
      FieldHelmets helmets,
      OpenSessions sessions,
      Caller caller,
      Clock clock,
      @ConfigProperty(name = "tapeline.field.oldest-wear-state") Duration wearStateHolds) {
    this.protocols = protocols;
    this.players = players;
    this.helmets = helmets;
    this.sessions = sessions;
    this.caller = caller;
    this.clock = clock;
    this.wearStateHolds = wearStateHolds;
  }

  /**
   * @param wanted codes of fields; empty for all own ones
   * @throws Problem for a field of others, and for too many fields at once
   */
  FieldPack.Sent take(List<String> wanted) {
    Instant now = clock.instant();
    List<Place> fields = fields(wanted);
    Set<String> codes = fields.stream().map(f -> f.code).collect(Collectors.toSet());
    FieldPlayers.Held held = players.of(codes);
    List<FieldPack.Helmet> shelf = helmets.at(codes);
    Map<String, List<String>> models = models(shelf, held.advisedModels());
    FieldPack pack =
        new FieldPack(
            caller.id(),
            wearStateHolds.toSeconds(),
            fields.stream()
                .map(f -> new FieldPack.Field(f.code, f.name, f.altitudeM, f.zone))
                .toList(),
            models,
            said(models),
            protocols.inForce(),
            players.shown(held),
            shelf,
            parts(codes, models.keySet()),
            sessions.of(held.players()));
    return sent(pack, now);
  }

  private List<Place> fields(List<String> wanted) {
    wanted.stream()
        .filter(code -> !caller.mayWorkAt(code))
        .findFirst()
        .ifPresent(
            code -> {
              throw Problem.otherField("You do not work at the field " + code + ".");
            });
    List<Place> fields =
        Place.fields().stream()
            .filter(f -> caller.mayWorkAt(f.code))
            .filter(f -> wanted.isEmpty() || wanted.contains(f.code))
            .toList();
    if (fields.size() > MOST_FIELDS) {
      throw new Problem(
          422,
          "too-many-fields",
          "Too many fields",
          "A phone holds up to "
              + MOST_FIELDS
              + " fields. Open the field app with those that you visit, such as"
              + " /fitting/field/?field=NORTH.",
          List.of());
    }
    return fields;
  }

  /** Of the models on the shelf and in the advice; no sizes where no chart is known. */
  private static Map<String, List<String>> models(
      List<FieldPack.Helmet> shelf, Set<String> advised) {
    Map<String, List<String>> charts = ModelSize.byModel();
    return Stream.concat(shelf.stream().map(FieldPack.Helmet::model), advised.stream())
        .distinct()
        .collect(
            Collectors.toMap(
                m -> m, m -> charts.getOrDefault(m, List.of()), (a, b) -> a, TreeMap::new));
  }

  private static Map<String, Map<String, Map<String, Integer>>> parts(
      Set<String> fields, Set<String> models) {
    Map<String, Map<String, Map<String, Integer>>> parts = new TreeMap<>();
    for (String field : fields) {
      Map<String, Map<String, Integer>> there = new TreeMap<>();
      models.forEach(model -> there.put(model, PartsAt.place(field, model)));
      parts.put(field, there);
    }
    return parts;
  }

  private Map<String, String> said(Map<String, List<String>> models) {
    Map<String, String> said = new TreeMap<>();
    models.forEach(
        (model, sizes) -> {
          said.put(model, Words.model(model));
          sizes.forEach(size -> said.put(size, Words.size(size)));
        });
    protocols
        .inForce()
        .remedies()
        .forEach(r -> r.items().forEach(item -> said.put(item, Words.item(item))));
    return said;
  }

  private static FieldPack.Sent sent(FieldPack pack, Instant now) {
    try {
      String json = EventJson.MAPPER.writeValueAsString(pack);
      UUID hash = UUID.nameUUIDFromBytes(json.getBytes(StandardCharsets.UTF_8));
      return new FieldPack.Sent(json, hash.toString(), now);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A pack that cannot be written", e);
    }
  }
}
