package org.tapeline.inventory.damage;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.UUID;
import org.tapeline.inventory.compat.CompatibilityTable;
import org.tapeline.inventory.helmet.Helmet;
import org.tapeline.inventory.helmet.HelmetCommand.Inspect;
import org.tapeline.inventory.helmet.HelmetDesk;
import org.tapeline.inventory.helmet.HelmetWork.After;
import org.tapeline.inventory.helmet.Words;
import org.tapeline.inventory.stock.StockDesk;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Takes what an inspection found; the parts that were put on leave the stock with it. */
@ApplicationScoped
public class InspectionDesk {
  private final HelmetDesk helmets;
  private final StockDesk stock;
  private final CompatibilityTable compatibility;
  private final CommandLog commands;
  private final Caller caller;
  private final Clock clock;
  private final InspectionPolicy policy;

  InspectionDesk(
      HelmetDesk helmets,
      StockDesk stock,
      CompatibilityTable compatibility,
      CommandLog commands,
      Caller caller,
      Clock clock) {
    this.helmets = helmets;
    this.stock = stock;
    this.compatibility = compatibility;
    this.commands = commands;
    this.caller = caller;
    this.clock = clock;
    try (InputStream file = InspectionDesk.class.getResourceAsStream("/damage/inspection.json")) {
      this.policy = EventJson.MAPPER.readValue(file, InspectionPolicy.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public InspectionPolicy policy() {
    return policy;
  }

  /**
   * @throws Problem 400 with what is wrong by field, 422 when a finding forbids the way back, 409
   *     when the helmet is not in quarantine
   */
  public Answer inspect(String tag, Inspection said, UUID id) {
    check(said);
    return commands.once(
        id,
        "inspect/" + tag,
        said,
        () -> {
          Helmet helmet = helmets.load(tag).helmet();
          checkParts(helmet.model(), said.parts());
          Cause cause = Cause.command(id).step("inspect");
          helmets.run(
              tag,
              new Inspect(
                  said.backToStock(),
                  said.findings(),
                  said.parts(),
                  Optional.of(policy.version()),
                  caller.id(),
                  clock.instant()),
              cause);
          book(helmet, said.parts(), cause);
          Helmet now = helmets.load(tag).helmet();
          return Answer.of(200, new After(tag, now.says(), now.place()));
        });
  }

  private void book(Helmet helmet, List<String> parts, Cause cause) {
    List<String> sorted = parts.stream().sorted().toList();
    for (int i = 0; i < sorted.size(); i++) {
      stock.useAtInspection(helmet.place(), sorted.get(i), helmet.model(), i, caller.id(), cause);
    }
    new TreeSet<>(sorted).forEach(item -> stock.changed(helmet.place(), item, cause));
  }

  private void check(Inspection said) {
    List<FieldError> errors = new ArrayList<>();
    if (!Inspection.OUTCOMES.contains(said.outcome())) {
      errors.add(new FieldError("outcome", "Write back-to-stock or retire."));
    }
    policy.check(said.backToStock(), said.findings(), said.parts()).stream()
        .map(w -> new FieldError(w.field(), w.sentence()))
        .forEach(errors::add);
    refuse(errors);
  }

  private void checkParts(String model, List<String> parts) {
    List<FieldError> errors = new ArrayList<>();
    for (String part : new TreeSet<>(parts)) {
      if (!compatibility.inForce().fits(part, model)) {
        errors.add(
            new FieldError(
                "parts",
                Words.code(part)
                    + " is not listed for "
                    + Words.model(model)
                    + ". Parts of two models are not mixed: take the right one, or leave the"
                    + " helmet in quarantine."));
      }
    }
    refuse(errors);
  }

  /** Where a finding forbids the way back, that is what the sentence says. */
  private static void refuse(List<FieldError> errors) {
    if (!errors.isEmpty()) {
      throw new Problem(422, "inspection", "Not recorded", errors.getFirst().message(), errors);
    }
  }
}
