package org.tapeline.inventory.helmet;

import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetFreed;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetHeld;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetReceived;

/** The open holds, as far as a helmet's record must know of them; in the caller's transaction. */
public interface HelmetHolds {

  /** Those that concern the helmet and do not stand in its record yet. */
  Set<UUID> due(String tag);

  /** Those that concern a helmet which comes only now; none can be placed until it is there. */
  Set<UUID> covering(HelmetReceived received);

  /** Now they stand in the records. */
  void held(List<HelmetHeld> held);

  /** Now they no longer stand there. */
  void freed(List<HelmetFreed> freed);
}
