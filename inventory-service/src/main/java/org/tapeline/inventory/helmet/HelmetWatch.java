package org.tapeline.inventory.helmet;

import java.util.List;
import org.tapeline.journal.Cause;

/** Who must act at once, in the same transaction, when a helmet comes or goes. */
public interface HelmetWatch {

  /** It can no longer be reserved: quarantined, retired or issued. */
  void taken(String tag, String why, Cause cause);

  /** The same for many at once: most of them concern nobody. */
  void takenAll(List<String> tags, String why, Cause cause);

  /** It can be reserved now. */
  void free(String tag, String model, String size, Cause cause);
}
