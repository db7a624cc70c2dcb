package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.UUID;
import org.tapeline.inventory.helmet.HelmetCommand.Move;
import org.tapeline.inventory.helmet.HelmetCommand.Recertify;
import org.tapeline.inventory.helmet.HelmetCommand.Retire;
import org.tapeline.inventory.helmet.HelmetCommand.Return;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** What people do with a helmet, each as one command. */
@ApplicationScoped
public class HelmetWork {
  private final HelmetDesk desk;
  private final Places places;
  private final CommandLog commands;
  private final Caller caller;
  private final Clock clock;

  HelmetWork(HelmetDesk desk, Places places, CommandLog commands, Caller caller, Clock clock) {
    this.desk = desk;
    this.places = places;
    this.commands = commands;
    this.caller = caller;
    this.clock = clock;
  }

  /** Where to. */
  public record To(String place) {}

  /** Why it is retired: age, lost or other. */
  public record Why(String why) {}

  /** The last day that the certification label shows. */
  public record Label(LocalDate certifiedUntil) {}

  /** Where it stands after that. */
  public record After(String tag, String state, String place) {}

  Answer move(String tag, To to, UUID id) {
    return does("move", tag, to, new Move(place(to), clock.instant()), id);
  }

  Answer giveBack(String tag, To to, UUID id) {
    return does("return", tag, to, new Return(place(to), clock.instant()), id);
  }

  /** The answer says the day that counts: no label outlasts the last age. */
  Answer recertify(String tag, Label label, UUID id) {
    if (label == null || label.certifiedUntil() == null) {
      throw Problem.badRequest(
          "certification",
          "Say until when: the last day on the label.",
          new Problem.FieldError("certifiedUntil", "Write the last day on the label: 2027-08-01."));
    }
    return commands.once(
        id,
        "recertify/" + tag,
        label,
        () -> {
          Instant now = clock.instant();
          desk.run(
              tag,
              new Recertify(label.certifiedUntil(), "label-read", caller.id(), now),
              Cause.command(id).step("recertify"));
          return Answer.of(200, new Label(desk.load(tag).helmet().certifiedUntil().orElseThrow()));
        });
  }

  Answer retire(String tag, Why why, UUID id) {
    if (why == null || why.why() == null || !why.why().matches("age|lost|other")) {
      throw Problem.badRequest(
          "why",
          "Say why: age, lost or other.",
          new Problem.FieldError("why", "Choose why: age, lost or other."));
    }
    return does("retire", tag, why, new Retire(why.why(), clock.instant()), id);
  }

  private String place(To to) {
    if (to == null || to.place() == null || !places.exists(to.place())) {
      throw Problem.badRequest(
          "place",
          "No such place. Give the code of one.",
          new Problem.FieldError("place", "Give a place's code."));
    }
    return to.place();
  }

  private Answer does(String name, String tag, Record body, HelmetCommand command, UUID id) {
    return commands.once(
        id,
        name + "/" + tag,
        body,
        () -> {
          desk.run(tag, command, Cause.command(id).step(name));
          Helmet now = desk.load(tag).helmet();
          return Answer.of(200, new After(tag, now.says(), now.place()));
        });
  }
}
