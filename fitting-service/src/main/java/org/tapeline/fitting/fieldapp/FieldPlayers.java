package org.tapeline.fitting.fieldapp;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  /**
   * The players with what is known of them, looked up once.
   *
   * @param advised by player
   * @param refits open cases by player
   */
  record Held(
      List<PlayerCopy> players,
      Map<UUID, List<AdvisedSizeCopy>> advised,
      Map<UUID, RefitView> refits) {

    Set<String> advisedModels() {
      return advised.values().stream()
          .flatMap(List::stream)
          .map(a -> a.model)
          .collect(Collectors.toSet());
    }
  }

  Held of(Set<String> fields) {
    Map<UUID, RefitView> open =
        refits.all().stream().collect(Collectors.toMap(RefitView::player, r -> r, (a, b) -> a));
    Map<UUID, PlayerCopy> held = new LinkedHashMap<>();
    PlayerCopy.onRosterAt(fields).forEach(p -> held.put(p.player, p));
    Set<UUID> booked =
        open.values().stream()
            .filter(r -> r.booking().filter(b -> fields.contains(b.field())).isPresent())
            .map(RefitView::player)
            .filter(id -> !held.containsKey(id))
            .collect(Collectors.toSet());
    PlayerCopy.onRosterAmong(booked).stream()
        .filter(PlayerCopy::playsHere)
        .forEach(p -> held.put(p.player, p));
    Map<UUID, List<AdvisedSizeCopy>> advised =
        AdvisedSizeCopy.ofPlayers(held.keySet()).stream()
            .collect(Collectors.groupingBy(a -> a.player));
    return new Held(List.copyOf(held.values()), advised, open);
  }

  List<FieldPack.Player> shown(Held held) {
    List<Sideline.Line> lines = sideline.lines(held.players());
    List<FieldPack.Player> shown = new ArrayList<>();
    for (int i = 0; i < lines.size(); i++) {
      PlayerCopy player = held.players().get(i);
      shown.add(
          held(
              player,
              lines.get(i),
              held.advised().getOrDefault(player.player, List.of()),
              Optional.ofNullable(held.refits().get(player.player))));
    }
    return shown;
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
        AdvisedSizeCopy.newest(advised),
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
