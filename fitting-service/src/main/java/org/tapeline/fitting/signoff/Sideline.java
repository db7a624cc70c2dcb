package org.tapeline.fitting.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.helmet.UnreadHelmets;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.recheck.RecheckRules.Check;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.roster.Words;
import org.tapeline.journal.Freshness;

/** Who may take the field in which helmet, as far as that is known right now. */
@ApplicationScoped
public class Sideline {
  private final Freshness freshness;
  private final Clock clock;
  private final PlannedChecks planned;
  private final OutOfPlay outOfPlay;
  private final UnreadHelmets unread;
  private final Duration oldestPicture;

  Sideline(
      Freshness freshness,
      Clock clock,
      PlannedChecks planned,
      OutOfPlay outOfPlay,
      UnreadHelmets unread,
      @ConfigProperty(name = "tapeline.sideline.oldest-picture", defaultValue = "PT10S")
          Duration oldestPicture) {
    this.freshness = freshness;
    this.clock = clock;
    this.planned = planned;
    this.outOfPlay = outOfPlay;
    this.unread = unread;
    this.oldestPicture = oldestPicture;
  }

  /**
   * A line of the list.
   *
   * @param tag the helmet of the sign-off that holds; empty when there is none
   */
  public record Line(
      UUID player, String name, String number, String team, String tag, WearState state) {}

  /**
   * A line with what it rests on.
   *
   * @param checks the re-checks ahead; empty without a sign-off that holds
   * @param facts what they follow from; empty without a sign-off that holds
   */
  public record Looked(Line line, List<Check> checks, Optional<PlannedChecks.Facts> facts) {}

  /**
   * Lines with the moment up to which they are true, both by one look at the clock of the peers.
   *
   * @param asOf empty when that is not known
   * @param looked in the order of the players
   */
  public record Seen(Optional<Instant> asOf, List<Looked> looked) {
    public List<Line> lines() {
      return looked.stream().map(Looked::line).toList();
    }
  }

  /** One player. */
  public Line line(PlayerCopy player) {
    return lines(List.of(player)).getFirst();
  }

  /** In the order of the players. */
  public List<Line> lines(List<PlayerCopy> players) {
    return seen(players).lines();
  }

  /** In the order of the players. */
  public List<Looked> looked(List<PlayerCopy> players) {
    return seen(players).looked();
  }

  /** In the order of the players, with up to when it is true. */
  public Seen seen(List<PlayerCopy> players) {
    Map<UUID, SignOffRow> words =
        SignOffRow.of(players.stream().map(p -> p.player).toList()).stream()
            .collect(Collectors.toMap(row -> row.player, Function.identity()));
    Set<String> tags = words.values().stream().map(row -> row.tag).collect(Collectors.toSet());
    Known known =
        new Known(
            freshness.caughtUpAt(),
            words,
            HelmetCopy.ofTags(tags).stream()
                .collect(Collectors.toMap(h -> h.tag, Function.identity())),
            unread.among(tags),
            outOfPlay.among(players.stream().map(p -> p.player).toList()),
            planned.facts(words.values().stream().filter(SignOffRow::holds).toList()));
    return new Seen(
        known.caughtUpAt(), players.stream().map(player -> look(player, known)).toList());
  }

  /** What is known at this moment; the freshness is asked for first, so that it is not too late. */
  private record Known(
      Optional<Instant> caughtUpAt,
      Map<UUID, SignOffRow> words,
      Map<String, HelmetCopy> helmets,
      Set<String> unread,
      Set<UUID> outOfPlay,
      Map<UUID, PlannedChecks.Facts> facts) {}

  private Looked look(PlayerCopy player, Known known) {
    SignOffRow word = known.words().get(player.player);
    Instant now = clock.instant();
    ZoneId zone = Place.zoneOf(player.field);
    Optional<PlannedChecks.Facts> facts = Optional.ofNullable(known.facts().get(player.player));
    List<Check> checks = facts.map(f -> planned.checks(f, now)).orElse(List.of());
    WearState state =
        WearRules.state(
            new WearRules.Known(
                Optional.ofNullable(word).map(Sideline::word),
                Optional.ofNullable(word)
                    .map(row -> known.helmets().get(row.tag))
                    .map(h -> helmet(h, known)),
                known.outOfPlay().contains(player.player),
                checks),
            new WearRules.Picture(
                known.caughtUpAt(),
                oldestPicture,
                known.caughtUpAt().map(at -> Words.time(at, zone)).orElse("")),
            now,
            LocalDate.ofInstant(now, zone));
    String tag = word != null && word.holds() ? word.tag : "";
    Line line = new Line(player.player, player.name(), player.number, player.team, tag, state);
    return new Looked(line, checks, facts);
  }

  private static WearRules.Word word(SignOffRow row) {
    return new WearRules.Word(row.player, row.state, row.why == null ? "" : row.why, row.at);
  }

  private static WearRules.Helmet helmet(HelmetCopy row, Known known) {
    return new WearRules.Helmet(
        row.stands(),
        Optional.ofNullable(row.holder),
        Optional.ofNullable(row.certifiedUntil),
        Optional.ofNullable(row.returnedAt),
        !known.unread().contains(row.tag));
  }

  /** Up to when the list is true; empty when that is not known. */
  public Optional<Instant> asOf() {
    return freshness.caughtUpAt();
  }

  public Duration oldestPicture() {
    return oldestPicture;
  }
}
