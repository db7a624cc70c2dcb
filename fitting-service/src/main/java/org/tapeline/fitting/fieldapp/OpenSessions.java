package org.tapeline.fitting.fieldapp;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.session.FitSessionRow;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;

/** The sessions of a pack that are not over, with all that was recorded in them. */
@ApplicationScoped
class OpenSessions {
  private final Journal journal;

  OpenSessions(Journal journal) {
    this.journal = journal;
  }

  List<FieldPack.Session> of(List<PlayerCopy> players) {
    return FitSessionRow.openOf(players.stream().map(p -> p.player).toList()).stream()
        .map(row -> new FieldPack.Session(row.session, row.player, events(row)))
        .toList();
  }

  private List<FieldPack.Event> events(FitSessionRow row) {
    return journal.load(StreamName.of("session", row.session, row.player)).stream()
        .map(OpenSessions::event)
        .toList();
  }

  private static FieldPack.Event event(RecordedEvent event) {
    String[] words = event.type().split("\\.");
    return new FieldPack.Event(words[words.length - 2], event.data());
  }
}
