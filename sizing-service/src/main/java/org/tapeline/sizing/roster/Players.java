package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.sizing.roster.PlayerDecider.Decision;

/** Players as streams of events, with the tables that follow from them. */
@ApplicationScoped
public class Players {
  private final Journal journal;
  private final HeadTables tables;

  Players(Journal journal, HeadTables tables) {
    this.journal = journal;
    this.tables = tables;
  }

  /**
   * Decides and records, in the caller's transaction.
   *
   * @return what was recorded; empty when nothing changed
   * @throws Problem when it is refused
   */
  public List<PlayerEvent> handle(PlayerCommand command, Cause cause) {
    StreamName stream = stream(command.player());
    List<RecordedEvent> history = journal.load(stream);
    return switch (PlayerDecider.decide(state(history), command)) {
      case Decision.Refused refused ->
          throw new Problem(422, refused.code(), "Not recorded", refused.sentence(), List.of());
      case Decision.Accepted accepted -> record(stream, history.size(), accepted.events(), cause);
    };
  }

  private List<PlayerEvent> record(
      StreamName stream, long version, List<PlayerEvent> events, Cause cause) {
    List<? extends Record> records = events.stream().map(e -> (Record) e).toList();
    journal
        .append(stream, version, records, cause)
        .forEach(event -> tables.show((PlayerEvent) event.data(), event.version()));
    return events;
  }

  /** As the player's events tell, also of somebody who was erased. */
  PlayerState state(UUID player) {
    return state(journal.load(stream(player)));
  }

  private static PlayerState state(List<RecordedEvent> history) {
    PlayerState state = PlayerState.NEW;
    for (RecordedEvent event : history) {
      state = PlayerDecider.evolve(state, (PlayerEvent) event.data());
    }
    return state;
  }

  private static StreamName stream(UUID player) {
    return StreamName.of("player", player, player);
  }
}
