package org.tapeline.inventory.damage;

import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.helmet.HelmetCommand.ReportDamage;
import org.tapeline.inventory.helmet.HelmetDesk;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.EventJson;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Takes damage reports: a structural one takes the helmet out of use in the same transaction. */
@ApplicationScoped
public class DamageDesk {
  private final HelmetDesk helmets;
  private final CommandLog commands;
  private final Caller caller;
  private final Clock clock;
  private final DamageRules rules;

  DamageDesk(HelmetDesk helmets, CommandLog commands, Caller caller, Clock clock) {
    this.helmets = helmets;
    this.commands = commands;
    this.caller = caller;
    this.clock = clock;
    try (InputStream file = DamageDesk.class.getResourceAsStream("/damage/rules.json")) {
      this.rules = EventJson.MAPPER.readValue(file, DamageRules.class);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public DamageRules rules() {
    return rules;
  }

  /** What is said of the damage, by codes of the rule table. */
  public record Said(String where, String what) {}

  /** How it was judged. */
  public record Judged(UUID report, String tag, String severity, String state) {}

  public Answer report(String tag, Said said, UUID id) {
    check(said);
    return commands.once(
        id,
        "report-damage/" + tag,
        said,
        () -> {
          boolean structural = rules.structural(said.where(), said.what());
          helmets.run(
              tag,
              new ReportDamage(
                  id,
                  said.where(),
                  said.what(),
                  structural,
                  Optional.of(rules.version()),
                  caller.id(),
                  clock.instant()),
              Cause.command(id));
          String severity = structural ? "structural" : "cosmetic";
          String state = helmets.load(tag).helmet().says();
          return Answer.of(200, new Judged(id, tag, severity, state));
        });
  }

  private void check(Said said) {
    List<Problem.FieldError> errors = new ArrayList<>();
    if (said == null || !rules.knowsWhere(said.where())) {
      errors.add(new Problem.FieldError("where", "Say where: " + codes(rules.where())));
    }
    if (said == null || !rules.knowsWhat(said.what())) {
      errors.add(new Problem.FieldError("what", "Say what: " + codes(rules.what())));
    }
    if (!errors.isEmpty()) {
      throw new Problem(400, "damage", "Not understood", "Choose where and what.", errors);
    }
  }

  private static String codes(List<DamageRules.Code> list) {
    return String.join(", ", list.stream().map(DamageRules.Code::code).toList());
  }
}
