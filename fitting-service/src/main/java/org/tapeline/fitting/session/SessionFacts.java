package org.tapeline.fitting.session;

import static org.tapeline.fitting.session.Entry.opt;
import static org.tapeline.fitting.session.Entry.wrong;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.roster.AdvisedSizeCopy;
import org.tapeline.fitting.roster.Hair;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.session.FitSessionCommand.KnownHelmet;
import org.tapeline.fitting.session.FitSessionEvent.AdvisedSize;
import org.tapeline.fitting.session.FitSessionEvent.Conditions;
import org.tapeline.journal.quarkus.http.Problem;

/** Looks up what the rules of a session want to know of players, helmets and the field. */
@ApplicationScoped
class SessionFacts {
  private final Clock clock;

  SessionFacts(Clock clock) {
    this.clock = clock;
  }

  static PlayerCopy player(String reference) {
    return PlayerCopy.find(reference)
        .filter(PlayerCopy::playsHere)
        .orElseThrow(() -> Problem.notFound("No player " + reference + " is on the roster here."));
  }

  static List<AdvisedSize> advised(PlayerCopy player) {
    return AdvisedSizeCopy.of(player.player).stream()
        .filter(a -> a.size != null)
        .map(a -> new AdvisedSize(a.model, a.size))
        .toList();
  }

  Here here(FitSession session) {
    return HereAtField.of(session, today(session));
  }

  Optional<KnownHelmet> known(FitSession state, String tag) {
    return HelmetCopy.locked(tag)
        .map(
            h ->
                new KnownHelmet(
                    h.tag, h.model, h.size, h.place, h.refusalFor(state.player(), today(state))));
  }

  /** The day at the field. */
  LocalDate today(FitSession state) {
    return LocalDate.ofInstant(clock.instant(), Place.zoneOf(state.field()));
  }

  static Conditions conditions(FitSession state, SessionBody.Passed body) {
    Optional<Double> air = opt(body.airCelsius());
    if (air.filter(c -> !(c >= -40 && c <= 60)).isPresent()) {
      throw wrong("airCelsius", "Air temperature from -40 to 60 degrees Celsius.");
    }
    Optional<String> hair = opt(body.hair()).filter(h -> !h.isBlank());
    if (hair.filter(h -> !Hair.isKind(h)).isPresent()) {
      throw wrong("hair", Hair.ONE_OF);
    }
    Place place = Place.findById(state.field());
    return new Conditions(air, Optional.ofNullable(place).map(p -> p.altitudeM), hair);
  }
}
