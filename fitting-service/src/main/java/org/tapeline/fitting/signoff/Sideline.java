package org.tapeline.fitting.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Freshness;

/** Who may take the field in which helmet, as far as that is known right now. */
@ApplicationScoped
public class Sideline {
  private final Freshness freshness;
  private final Clock clock;
  private final Duration oldestPicture;

  Sideline(
      Freshness freshness,
      Clock clock,
      @ConfigProperty(name = "tapeline.sideline.oldest-picture", defaultValue = "PT10S")
          Duration oldestPicture) {
    this.freshness = freshness;
    this.clock = clock;
    this.oldestPicture = oldestPicture;
  }

  /** A line of the list. */
  public record Line(
      UUID player, String name, String number, String team, String tag, WearState state) {}

  public List<Line> team(String team) {
    return PlayerCopy.ofTeam(team).stream().map(this::line).toList();
  }

  /** One player; the name is that of the local copy. */
  public Line line(PlayerCopy player) {
    SignOffRow row = SignOffRow.findById(player.player);
    String tag = row == null || !row.state.equals("signed-off") ? "" : row.tag;
    return new Line(
        player.player, player.name(), player.number, player.team, tag, state(player, row));
  }

  private WearState state(PlayerCopy player, SignOffRow row) {
    Instant now = clock.instant();
    Optional<Instant> caughtUp = freshness.caughtUpAt();
    if (caughtUp.isEmpty() || caughtUp.get().plus(oldestPicture).isBefore(now)) {
      return WearState.notKnown(caughtUp.map(at -> said(at, player.field)));
    }
    return WearState.of(Optional.ofNullable(row).map(r -> facts(r)), now);
  }

  private static WearState.Facts facts(SignOffRow row) {
    HelmetCopy helmet = HelmetCopy.findById(row.tag);
    boolean inService = helmet != null && helmet.inService();
    // Until inventory has issued the helmet the holder is still the one before, or nobody.
    boolean elsewhere =
        helmet != null
            && helmet.state.equals("issued")
            && helmet.holder != null
            && !helmet.holder.equals(row.player);
    return new WearState.Facts(
        Optional.of(row.state), Optional.ofNullable(row.why), row.at, inService, elsewhere);
  }

  private static String said(Instant at, String field) {
    Place place = field == null ? null : Place.findById(field);
    ZoneId zone = place == null ? ZoneId.of("UTC") : ZoneId.of(place.zone);
    return DateTimeFormatter.ofPattern("HH:mm").format(at.atZone(zone))
        + (place == null ? " UTC" : "");
  }

  /** Up to when the list is true; empty when that is not known. */
  public Optional<Instant> asOf() {
    return freshness.caughtUpAt();
  }
}
