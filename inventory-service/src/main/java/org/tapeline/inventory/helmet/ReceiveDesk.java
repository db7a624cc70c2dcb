package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.Receiving.Taken;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Takes in deliveries by scanning, each helmet as one command. */
@ApplicationScoped
public class ReceiveDesk {
  private final HelmetDesk desk;
  private final HelmetTags fresh;
  private final TagReading reading;
  private final Receivings receivings;
  private final Places places;
  private final CommandLog commands;
  private final Caller caller;
  private final Clock clock;
  private final Database database;

  ReceiveDesk(
      HelmetDesk desk,
      HelmetTags fresh,
      TagReading reading,
      Receivings receivings,
      Places places,
      CommandLog commands,
      Caller caller,
      Clock clock,
      Database database) {
    this.desk = desk;
    this.fresh = fresh;
    this.reading = reading;
    this.receivings = receivings;
    this.places = places;
    this.commands = commands;
    this.caller = caller;
    this.clock = clock;
    this.database = database;
  }

  /** One tag, as it was typed. */
  record Scan(UUID receiving, String tag) {}

  /** A helmet as JSON; without a tag it gets a fresh one. */
  public record One(
      String tag,
      String model,
      String size,
      String lot,
      String manufacturedOn,
      String certifiedUntil,
      String place) {
    DeliveryForm form() {
      return new DeliveryForm(model, size, lot, manufacturedOn, certifiedUntil, place);
    }
  }

  /** Begins a delivery; its id is that of the command. */
  Answer open(DeliveryForm form, UUID id) {
    Delivery delivery = checked(form);
    return commands.once(
        id,
        "open-receiving",
        form,
        () -> {
          receivings.add(new Receiving(id, delivery, clock.instant(), caller.id()));
          return Answer.of(201, form);
        });
  }

  /**
   * Takes in a helmet with its tag.
   *
   * @throws Problem 400 for what is no tag, 409 for one that is on another helmet or here twice
   */
  Answer take(UUID receiving, String typed, UUID id) {
    Receiving r = receivings.find(receiving);
    String tag = reading.needed(typed);
    return commands.once(
        id,
        "receive",
        new Scan(receiving, tag),
        () -> {
          receivings.notTwice(receiving, tag);
          return Answer.of(200, keep(r, tag, received(tag, r.delivery(), id), clock.instant()));
        });
  }

  /** Takes in a helmet that has no tag: it gets a fresh one. */
  Answer takeUntagged(UUID receiving, UUID id) {
    Receiving r = receivings.find(receiving);
    return commands.once(
        id,
        "receive-untagged",
        new Scan(receiving, ""),
        () -> {
          String tag = fresh.next().value();
          received(tag, r.delivery(), id);
          return Answer.of(200, keep(r, tag, "untagged", clock.instant()));
        });
  }

  /** One by itself. */
  Answer receiveOne(One one, UUID id) {
    if (one == null) {
      throw Problem.badRequest("helmet", "Say what helmet it is.");
    }
    Delivery delivery = checked(one.form());
    String given = one.tag() == null || one.tag().isBlank() ? "" : reading.needed(one.tag());
    return commands.once(
        id,
        "receive-one",
        one,
        () -> {
          String tag = given.isEmpty() ? fresh.next().value() : given;
          return Answer.of(201, new Taken(tag, received(tag, delivery, id)));
        });
  }

  private Delivery checked(DeliveryForm form) {
    return form.checked(LocalDate.now(clock.withZone(places.zone(form.place()))), places::exists);
  }

  /** How it was: tagged, or ordered under this tag. */
  private String received(String tag, Delivery delivery, UUID id) {
    String ordered =
        database
            .first(
                "select model || ' ' || size from helmet where tag = ? and state = 'ordered'",
                row -> row.getString(1),
                tag)
            .orElse("");
    if (!ordered.isEmpty() && !ordered.equals(delivery.model() + " " + delivery.size())) {
      String sentence = "Under this tag another kind was ordered: " + ordered + ". Look again.";
      throw new Problem(
          409,
          "ordered-otherwise",
          "Not possible now",
          sentence,
          List.of(new FieldError("tag", sentence)));
    }
    desk.run(tag, delivery.receive(clock.instant()), Cause.command(id).step("receive-" + tag));
    return ordered.isEmpty() ? "tagged" : "ordered";
  }

  private Taken keep(Receiving receiving, String tag, String how, Instant at) {
    receivings.keep(receiving.id(), tag, how, at);
    return new Taken(tag, how);
  }
}
