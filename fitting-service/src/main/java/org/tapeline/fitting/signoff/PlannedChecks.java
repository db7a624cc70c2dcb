package org.tapeline.fitting.signoff;

import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toSet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.recheck.FieldConditionsRow;
import org.tapeline.fitting.recheck.HairChangeRow;
import org.tapeline.fitting.recheck.RecheckPlans;
import org.tapeline.fitting.recheck.RecheckRules;
import org.tapeline.fitting.recheck.RecheckRules.Causes;
import org.tapeline.fitting.recheck.RecheckRules.Check;
import org.tapeline.fitting.recheck.RecheckRules.Fit;
import org.tapeline.fitting.roster.AdvisedSizeCopy;
import org.tapeline.fitting.roster.PlayerCopy;

/** Gathers what the re-checks of sign-offs that hold depend on, many players at a time. */
@ApplicationScoped
public class PlannedChecks {
  private final RecheckPlans plans;

  PlannedChecks(RecheckPlans plans) {
    this.plans = plans;
  }

  /**
   * The fit and what happened since.
   *
   * @param hair at the fit: usual, short, long or braids
   */
  public record Facts(Fit fit, Optional<String> hair, Causes causes) {}

  public List<Check> checks(Facts facts, Instant now) {
    return RecheckRules.checks(plans.inForce(), facts.fit(), facts.causes(), now);
  }

  /**
   * @param rows sign-offs that hold
   */
  public Map<UUID, Facts> facts(Collection<SignOffRow> rows) {
    Set<UUID> players = rows.stream().map(row -> row.player).collect(toSet());
    Set<String> tags = rows.stream().map(row -> row.tag).collect(toSet());
    Map<UUID, PlayerCopy> roster = by(PlayerCopy.among(players), p -> p.player);
    Map<UUID, HairChangeRow> hair = by(HairChangeRow.of(players), h -> h.player);
    Map<String, HelmetCopy> helmets = by(HelmetCopy.ofTags(tags), h -> h.tag);
    Set<String> edges =
        AdvisedSizeCopy.ofPlayers(players).stream()
            .filter(advice -> advice.second != null)
            .map(advice -> advice.player + advice.model)
            .collect(toSet());
    Map<String, RecheckRules.Field> fields = new HashMap<>();
    Map<UUID, Facts> facts = new HashMap<>();
    for (SignOffRow row : rows) {
      Optional<PlayerCopy> player = Optional.ofNullable(roster.get(row.player));
      RecheckRules.Field field =
          player
              .map(p -> p.field)
              .map(code -> fields.computeIfAbsent(code, PlannedChecks::field))
              .orElse(RecheckRules.Field.UNKNOWN);
      Causes causes =
          new Causes(
              Optional.ofNullable(hair.get(row.player)).map(h -> h.at),
              player.map(p -> p.measuredAt).filter(at -> edges.contains(row.player + row.model)),
              player.flatMap(PlannedChecks::remeasureDue),
              Optional.ofNullable(helmets.get(row.tag)).map(h -> h.cosmeticDamageAt),
              field);
      facts.put(row.player, new Facts(fit(row), Optional.ofNullable(row.fitHair), causes));
    }
    return facts;
  }

  private static <K, V> Map<K, V> by(List<V> rows, Function<V, K> key) {
    return rows.stream().collect(toMap(key, Function.identity()));
  }

  private static Fit fit(SignOffRow row) {
    return new Fit(
        row.at, Optional.ofNullable(row.fitAirCelsius), Optional.ofNullable(row.fitAltitudeM));
  }

  /** Asked for, and not measured since. */
  private static Optional<Instant> remeasureDue(PlayerCopy player) {
    return Optional.ofNullable(player.remeasureDueAt)
        .filter(at -> player.measuredAt == null || player.measuredAt.isBefore(at));
  }

  private static RecheckRules.Field field(String code) {
    Optional<FieldConditionsRow> conditions = FieldConditionsRow.findByIdOptional(code);
    Optional<Place> place = Place.findByIdOptional(code);
    return new RecheckRules.Field(
        conditions.map(c -> c.airCelsius),
        conditions.map(c -> c.measuredAt),
        place.map(p -> p.altitudeM));
  }
}
