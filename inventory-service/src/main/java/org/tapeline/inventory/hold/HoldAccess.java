package org.tapeline.inventory.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.hold.HoldList.Line;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;

/** Who sees what of a hold: a fitter the helmets of the own fields, the warehouse all. */
@ApplicationScoped
public class HoldAccess {
  private final Caller caller;
  private final HoldList list;

  HoldAccess(Caller caller, HoldList list) {
    this.caller = caller;
    this.list = list;
  }

  /** Those that the caller may see. */
  List<Line> lines(UUID hold) {
    Optional<List<String>> bounds =
        caller.worksAs("warehouse")
            ? Optional.empty()
            : Optional.of(caller.fields().stream().sorted().toList());
    return list.of(hold, bounds);
  }

  /**
   * The helmet of the hold, for somebody who may lay it aside.
   *
   * @throws Problem 404 when it is not under the hold, or belongs to a field that is not the
   *     caller's
   */
  Line mine(UUID hold, String tag) {
    return lines(hold).stream()
        .filter(line -> line.tag().equals(tag) && line.under())
        .findFirst()
        .orElseThrow(
            () ->
                Problem.notFound("Not under this hold at your field: " + tag + ". Read it again."));
  }
}
