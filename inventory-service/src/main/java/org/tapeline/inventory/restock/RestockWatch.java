package org.tapeline.inventory.restock;

import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Cause;

/** Who must act at once, in the same transaction, when a request is over. */
public interface RestockWatch {

  /** A case that waits, with what it waits for. */
  record Waits(UUID refitCase, String needKey) {}

  /** It came; {@code usable} when there was anything that can be used. */
  void arrived(Restock restock, List<Waits> causes, boolean usable, Cause cause);

  /** How many re-fit cases wait for it now. */
  long waiting(Restock restock, List<Waits> causes);

  /** It will not come, or did not. */
  void cancelled(Restock restock, List<Waits> causes, Cause cause);
}
