package org.tapeline.fitting.helmet;

import org.tapeline.journal.ReceivedEvent;

/** Who must act when damage was found to be on the surface only; the helmet's row has it. */
public interface DamageSeen {
  void cosmetic(String tag, ReceivedEvent event);
}
