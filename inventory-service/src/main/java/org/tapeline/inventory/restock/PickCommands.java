package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.restock.Restock.State;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** What somebody does with the pick list in hand, each tap as one command. */
@ApplicationScoped
public class PickCommands {
  private final PickLines lines;
  private final RestockStore store;
  private final RestockWork work;
  private final CommandLog commands;
  private final Caller caller;

  PickCommands(
      PickLines lines, RestockStore store, RestockWork work, CommandLog commands, Caller caller) {
    this.lines = lines;
    this.store = store;
    this.work = work;
    this.commands = commands;
    this.caller = caller;
  }

  /** Whether it is taken after that. */
  public record Taken(UUID request, boolean taken) {}

  /** The requests that are picked now. */
  public record Picked(List<UUID> requests) {}

  /** Taken from the shelf, or put back: nothing is told to anybody before the list is done. */
  Answer take(UUID request, boolean taken, UUID id) {
    Taken body = new Taken(request, taken);
    return commands.once(
        id,
        "restock-take/" + request,
        body,
        () -> {
          Restock r = store.locked(request);
          if (r.state() != State.REQUESTED) {
            throw Problem.conflict(
                "restock-" + r.says(), "The request is " + r.says() + " already. See the list.");
          }
          if (taken) {
            lines.take(request, caller.id());
          } else {
            store.untaken(request);
          }
          return Answer.of(200, body);
        });
  }

  /** What is taken from there is picked. */
  Answer done(String from, UUID id) {
    return commands.once(
        id,
        "restock-picked/" + from,
        from,
        () -> {
          List<UUID> taken = lines.takenFrom(from);
          if (taken.isEmpty()) {
            throw Problem.conflict("nothing-taken", "Nothing is taken yet. Tap what you take.");
          }
          taken.forEach(r -> work.pick(r, caller.id(), Cause.command(id).step("pick-" + r)));
          return Answer.of(200, new Picked(taken));
        });
  }
}
