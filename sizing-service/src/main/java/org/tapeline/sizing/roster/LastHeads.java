package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.journal.quarkus.access.Caller;

/** The heads that the caller may correct. */
@ApplicationScoped
class LastHeads {
  private static final int LAST = 20;

  private final Caller caller;

  LastHeads(Caller caller) {
    this.caller = caller;
  }

  /** The caller's own last 20, the equipment manager's those of all; newest first. */
  List<HeadRow> all() {
    return HeadRow.last(caller.isManager() ? Optional.empty() : Optional.of(caller.id()), LAST);
  }

  /** A head with what it was before, and whose it is. */
  record Line(PlayerRow player, HeadLine line) {}

  List<Line> lines() {
    List<HeadRow> heads = all();
    Map<UUID, PlayerRow> players =
        PlayerRow.of(heads.stream().map(head -> head.player).distinct().toList()).stream()
            .collect(Collectors.toMap(row -> row.player, row -> row));
    return HeadLine.of(heads).stream()
        .map(line -> new Line(players.get(line.head().player), line))
        .filter(line -> caller.mayWorkAt(line.player().field))
        .toList();
  }

  boolean offers(HeadRow head) {
    return all().contains(head);
  }
}
