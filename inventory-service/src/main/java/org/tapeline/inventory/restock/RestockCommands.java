package org.tapeline.inventory.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import java.util.function.Function;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;

/** What the warehouse does, each as one command. */
@ApplicationScoped
public class RestockCommands {
  private final RestockWork work;
  private final CommandLog commands;
  private final Caller caller;

  RestockCommands(RestockWork work, CommandLog commands, Caller caller) {
    this.work = work;
    this.commands = commands;
    this.caller = caller;
  }

  /** Where the request stands after that. */
  public record After(UUID request, String state) {}

  Answer pick(UUID request, UUID id) {
    return once("pick", request, "", id, c -> work.pick(request, caller.id(), c));
  }

  Answer ship(UUID request, UUID id) {
    return once("ship", request, "", id, c -> work.ship(request, caller.id(), c));
  }

  Answer cancel(UUID request, String why, UUID id) {
    return once("cancel", request, why, id, c -> work.cancel(request, why, caller.id(), c));
  }

  Answer receive(UUID request, Receipt receipt, UUID id) {
    Receipt what = receipt == null ? Receipt.ALL : receipt;
    return once("receive", request, what, id, c -> work.receive(request, what, caller.id(), c));
  }

  private Answer once(
      String name, UUID request, Object body, UUID id, Function<Cause, Restock> does) {
    return commands.once(
        id,
        "restock-" + name + "/" + request,
        body,
        () -> Answer.of(200, new After(request, does.apply(Cause.command(id).step(name)).says())));
  }
}
