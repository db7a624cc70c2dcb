package org.tapeline.fitting.roster;

import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;

/** Who must act when a head was measured, advised on, or is to be measured again. */
public interface HeadNews {
  void head(UUID player, ReceivedEvent event);
}
