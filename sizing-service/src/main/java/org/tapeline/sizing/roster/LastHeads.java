package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import org.tapeline.journal.quarkus.access.Caller;

/** The heads that the caller may correct. */
@ApplicationScoped
class LastHeads {
  private static final int LAST = 20;

  private final Caller caller;

  LastHeads(Caller caller) {
    this.caller = caller;
  }

  /** The caller's own last 20, the equipment manager's those of all; newest first. */
  List<HeadRow> all() {
    return HeadRow.last(caller.isManager() ? Optional.empty() : Optional.of(caller.id()), LAST);
  }

  boolean offers(HeadRow head) {
    return all().contains(head);
  }
}
