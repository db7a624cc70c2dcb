package org.tapeline.inventory.reconditioning;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import java.util.function.Consumer;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.reconditioning.Drafts.Draft;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.quarkus.access.Caller;

/** What people do with batches, each as one command. */
@ApplicationScoped
public class BatchCommands {
  private final Drafts drafts;
  private final BatchDesk desk;
  private final BatchStore store;
  private final DueList due;
  private final Places places;
  private final CommandLog commands;
  private final Database database;
  private final Caller caller;

  BatchCommands(
      Drafts drafts,
      BatchDesk desk,
      BatchStore store,
      DueList due,
      Places places,
      CommandLog commands,
      Database database,
      Caller caller) {
    this.drafts = drafts;
    this.desk = desk;
    this.store = store;
    this.due = due;
    this.places = places;
    this.commands = commands;
    this.database = database;
    this.caller = caller;
  }

  /** Where the batch stands after that. */
  public record After(UUID batch, String state, int helmets, int packed, int out, long costCents) {}

  Answer begin(Draft draft, UUID id) {
    UUID batch = DerivedId.from(id, "batch");
    return once("begin", batch, draft, id, cause -> drafts.begin(batch, draft));
  }

  Answer add(UUID batch, String tag, UUID id) {
    return once("add", batch, tag, id, cause -> drafts.add(batch, tag));
  }

  Answer pack(UUID batch, List<String> tags, boolean packed, UUID id) {
    return once(
        packed ? "pack" : "unpack", batch, tags, id, cause -> drafts.pack(batch, tags, packed));
  }

  Answer remove(UUID batch, String tag, UUID id) {
    return once("remove", batch, tag, id, cause -> drafts.remove(batch, tag));
  }

  /** Nothing is left of a batch that was given up. */
  Answer giveUp(UUID batch, UUID id) {
    return commands.once(
        id,
        "reconditioning-give-up/" + batch,
        "",
        () -> {
          database.lock("reconditioning/" + batch);
          drafts.giveUp(batch);
          return Answer.of(200, new After(batch, "given-up", 0, 0, 0, 0));
        });
  }

  Answer send(UUID batch, UUID id) {
    return once("send", batch, "", id, cause -> desk.send(batch, cause));
  }

  Answer receive(UUID batch, Receipt receipt, UUID id) {
    return once("receive", batch, receipt, id, cause -> receive(batch, receipt, cause));
  }

  private void receive(UUID batch, Receipt receipt, Cause cause) {
    String from = store.known(batch).place();
    String place = receipt.place().isEmpty() ? from : receipt.place();
    if (!places.exists(place)) {
      throw Drafts.wrong("place", "Choose the place where they are now.");
    }
    List<String> tags = receipt.tags().isEmpty() ? desk.out(batch) : receipt.tags();
    BatchDesk.Came came =
        new BatchDesk.Came(
            tags, receipt.known(), receipt.until(due.today()), receipt.cents(), place, caller.id());
    desk.receive(batch, came, cause);
  }

  Answer close(UUID batch, UUID id) {
    return once("close", batch, "", id, cause -> desk.close(batch, cause));
  }

  private Answer once(String name, UUID batch, Object body, UUID id, Consumer<Cause> does) {
    return commands.once(
        id,
        "reconditioning-" + name + "/" + batch,
        body,
        () -> {
          database.lock("reconditioning/" + batch);
          does.accept(Cause.command(id).step(name));
          BatchSummary s = store.known(batch);
          return Answer.of(
              200, new After(batch, s.says(), s.helmets(), s.packed(), s.unknown(), s.costCents()));
        });
  }
}
