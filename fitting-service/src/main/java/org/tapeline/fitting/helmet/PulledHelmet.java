package org.tapeline.fitting.helmet;

import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;

/** Who must act when a helmet may no longer be worn. */
public interface PulledHelmet {

  /**
   * @param helmet already out of service in its row
   * @param why damage, hold, inspection or retired
   * @param holder who has it by inventory's records
   */
  void pulled(HelmetCopy helmet, String why, Optional<UUID> holder, ReceivedEvent event);
}
