package org.tapeline.fitting.helmet;

import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;

/** Who must act when a helmet may no longer be worn. */
public interface PulledHelmet {

  /**
   * @param why damage, hold or retired
   */
  void helmetFailed(String tag, String why, ReceivedEvent event);

  /** Inventory could not issue the helmet to the player whom that session signed off. */
  void issueRefused(UUID player, UUID session, String tag, ReceivedEvent event);
}
