package org.tapeline.inventory.importing;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import org.tapeline.inventory.csv.ImportAnswer;
import org.tapeline.inventory.csv.ImportAnswer.Mode;
import org.tapeline.inventory.csv.ImportRefused;
import org.tapeline.inventory.helmet.HelmetImport;
import org.tapeline.inventory.place.PlaceImport;
import org.tapeline.inventory.stock.PartImport;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Runs an import as one command. */
@ApplicationScoped
public class Imports {
  private final CommandLog commands;
  private final PlaceImport places;
  private final HelmetImport helmets;
  private final PartImport parts;
  private final Caller caller;

  Imports(
      CommandLog commands,
      PlaceImport places,
      HelmetImport helmets,
      PartImport parts,
      Caller caller) {
    this.commands = commands;
    this.places = places;
    this.helmets = helmets;
    this.parts = parts;
    this.caller = caller;
  }

  /**
   * @throws ImportRefused when all or none was wanted and some row is wrong
   */
  Answer run(String what, UUID id, Mode mode, String csv) {
    String text = csv == null ? "" : csv;
    boolean ofPlaces = what.equals("places") || what.equals("travel");
    if (ofPlaces && !caller.isManager()) {
      throw Problem.forbidden("Places are imported by the equipment manager.");
    }
    return commands.once(
        id,
        "import-" + what + "/" + mode,
        text,
        () -> {
          ImportAnswer answer = importing(what, text, Cause.command(id));
          if (mode == Mode.ALL_OR_NONE && !answer.errors().isEmpty()) {
            throw new ImportRefused(answer.errors());
          }
          return Answer.of(200, answer);
        });
  }

  private ImportAnswer importing(String what, String csv, Cause cause) {
    return switch (what) {
      case "places" -> places.places(csv, cause);
      case "travel" -> places.travel(csv, cause);
      case "helmets" -> helmets.run(csv, cause);
      default -> parts.run(csv, caller.id(), cause);
    };
  }
}
