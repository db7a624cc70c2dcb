package org.tapeline.journal;

import java.util.UUID;
import java.util.function.Supplier;

/** Does every command once, however often it is sent. */
public interface CommandLog {

  /**
   * Does the work in one transaction with the note that it was done. The same id again does nothing
   * and gives the first answer. A refusal (an exception) is not noted: the command can be sent
   * again. Work that meets a {@link StreamConflict}, or that the database undid for another's sake
   * (deadlock, serialization failure), is decided again from the newer state, a few times: it may
   * run more than once and must touch nothing but the database.
   *
   * @param body what was asked, so that an id that is used for something else is noticed
   * @throws CommandReused when the id was used before for another command or body
   */
  Answer once(UUID commandId, String command, Object body, Supplier<Answer> work);
}
