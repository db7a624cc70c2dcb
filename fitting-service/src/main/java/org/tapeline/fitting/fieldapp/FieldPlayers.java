package org.tapeline.fitting.fieldapp;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.fitting.refit.OpenRefits;
import org.tapeline.fitting.refit.RefitView;
import org.tapeline.fitting.roster.AdvisedSizeCopy;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.signoff.Sideline;

/** The players of a pack: those of the fields, and those whose re-fit is booked there. */
@ApplicationScoped
class FieldPlayers {
  private final Sideline sideline;
  private final OpenRefits refits;

  FieldPlayers(Sideline sideline, OpenRefits refits) {
    this.sideline = sideline;
    this.refits = refits;
  }

  List<PlayerCopy> of(Set<String> fields) {
    Map<UUID, PlayerCopy> held = new LinkedHashMap<>();
    PlayerCopy.onRoster().stream()
        .filter(p -> fields.contains(p.field))
        .forEach(p -> held.put(p.player, p));
    Set<UUID> booked =
        refits.all().stream()
            .filter(r -> r.booking().filter(b -> fields.contains(b.field())).isPresent())
            .map(RefitView::player)
            .filter(id -> !held.containsKey(id))
            .collect(Collectors.toSet());
    PlayerCopy.onRosterAmong(booked).stream()
        .filter(PlayerCopy::playsHere)
        .forEach(p -> held.put(p.player, p));
    return List.copyOf(held.values());
  }

  List<String> advisedModels(List<PlayerCopy> held) {
    return advised(held).values().stream()
        .flatMap(List::stream)
        .map(a -> a.model)
        .distinct()
        .toList();
  }

  List<FieldPack.Player> held(List<PlayerCopy> players) {
    List<Sideline.Line> lines = sideline.lines(players);
    Map<UUID, List<AdvisedSizeCopy>> advised = advised(players);
    Map<UUID, RefitView> open =
        refits.all().stream().collect(Collectors.toMap(RefitView::player, r -> r, (a, b) -> a));
    List<FieldPack.Player> held = new ArrayList<>();
    for (int i = 0; i < players.size(); i++) {
      PlayerCopy player = players.get(i);
      held.add(
          held(
              player,
              lines.get(i),
              advised.getOrDefault(player.player, List.of()),
              Optional.ofNullable(open.get(player.player))));
    }
    return held;
  }

  private static Map<UUID, List<AdvisedSizeCopy>> advised(List<PlayerCopy> players) {
    return AdvisedSizeCopy.ofPlayers(players.stream().map(p -> p.player).toList()).stream()
        .collect(Collectors.groupingBy(a -> a.player));
  }

  private static FieldPack.Player held(
      PlayerCopy player,
      Sideline.Line line,
      List<AdvisedSizeCopy> advised,
      Optional<RefitView> refit) {
    return new FieldPack.Player(
        player.player,
        shortName(player),
        player.number == null ? "" : player.number,
        player.team,
        player.field,
        new FieldPack.Wear(line.state().code(), line.state().said(), line.state().reason()),
        line.tag(),
        advised.stream()
            .map(
                a ->
                    new FieldPack.Advised(
                        a.model,
                        Optional.ofNullable(a.size),
                        Optional.ofNullable(a.second),
                        a.reason))
            .toList(),
        advised.stream().map(a -> a.advisedAt).filter(Objects::nonNull).max(Instant::compareTo),
        refit
            .map(r -> r.bookedSaid().isEmpty() ? "waits for a fit day" : r.bookedSaid())
            .orElse(""));
  }

  /** Enough to call a child by; a phone that is lost must not tell more. */
  static String shortName(PlayerCopy player) {
    if (player.givenName == null) {
      return player.name();
    }
    boolean initial = player.familyName != null && !player.familyName.isBlank();
    return player.givenName
        + (initial
            ? " " + player.familyName.substring(0, player.familyName.offsetByCodePoints(0, 1)) + "."
            : "");
  }
}
