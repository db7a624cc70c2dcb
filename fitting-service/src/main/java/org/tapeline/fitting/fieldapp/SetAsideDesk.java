package org.tapeline.fitting.fieldapp;

import com.fasterxml.jackson.core.JsonProcessingException;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Answer;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Takes what phones set aside, and the note that somebody has seen it. */
@ApplicationScoped
class SetAsideDesk {
  private final CommandLog commands;
  private final Caller caller;
  private final Clock clock;

  SetAsideDesk(CommandLog commands, Caller caller, Clock clock) {
    this.commands = commands;
    this.caller = caller;
    this.clock = clock;
  }

  /**
   * Keeps it. That the player left or the field changed hands since is no reason not to: nothing
   * that was entered is lost.
   */
  Answer keep(UUID id, SetAside aside) {
    String problem = aside == null ? "Send a JSON body." : aside.problem();
    if (!problem.isEmpty()) {
      throw Problem.badRequest("set-aside", problem);
    }
    return commands.once(
        id,
        "set-aside",
        aside,
        () -> {
          PlayerCopy player =
              PlayerCopy.find(aside.player())
                  .orElseThrow(() -> Problem.notFound("There is no such player."));
          row(id, aside, player.player).persistAndFlush();
          return Answer.of(201, Map.of("kept", id.toString()));
        });
  }

  private SetAsideRow row(UUID id, SetAside aside, UUID player) {
    SetAsideRow row = new SetAsideRow();
    row.command = id;
    row.session = aside.session();
    row.player = player;
    row.field = aside.field();
    row.fitter = caller.id();
    row.refused = aside.refused();
    row.code = aside.code();
    row.sentence = aside.sentence();
    row.entries = json(aside.entries());
    row.at = clock.instant();
    return row;
  }

  private static String json(List<SetAside.Entry> entries) {
    try {
      return EventJson.MAPPER.writeValueAsString(entries);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("Entries that cannot be written", e);
    }
  }

  /** Those of the caller's fields that nobody has seen yet. */
  List<SetAsideRow> unseen() {
    return SetAsideRow.unseen().stream().filter(r -> caller.mayWorkAt(r.field)).toList();
  }

  List<SetAsideRow> unseenOf(UUID player) {
    return SetAsideRow.unseenOf(player).stream().filter(r -> caller.mayWorkAt(r.field)).toList();
  }

  void seen(UUID id) {
    SetAsideRow row =
        SetAsideRow.<SetAsideRow>findByIdOptional(id)
            .filter(r -> caller.mayWorkAt(r.field))
            .orElseThrow(() -> Problem.notFound("Nothing is set aside under this number."));
    if (row.seenAt == null) {
      row.seenBy = caller.id();
      row.seenAt = clock.instant();
    }
  }
}
