package org.tapeline.journal;

import java.util.UUID;

/** A command's id was used before, for something else. */
public final class CommandReused extends RuntimeException {
  private static final long serialVersionUID = 1L;

  public CommandReused(UUID commandId) {
    super("Command " + commandId + " was used before for another request");
  }
}
