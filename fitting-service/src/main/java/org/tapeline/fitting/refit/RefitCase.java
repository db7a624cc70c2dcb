package org.tapeline.fitting.refit;

import java.util.List;
import java.util.Optional;
import org.tapeline.fitting.refit.RefitEvent.RefitBooked;
import org.tapeline.fitting.session.Need;

/**
 * A re-fit case as its events tell.
 *
 * @param booking the newest one; empty while it waits
 */
public record RefitCase(Status status, List<Need> needs, Optional<RefitBooked> booking) {

  /** Where the case stands. */
  public enum Status {
    NOT_OPENED,
    OPEN,
    CLOSED
  }

  public static final RefitCase NONE =
      new RefitCase(Status.NOT_OPENED, List.of(), Optional.empty());
}
