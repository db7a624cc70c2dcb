package org.tapeline.fitting.roster;

import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;

/** Who must act when a player comes, moves or goes; the player's row is locked and up to date. */
public interface RosterChange {
  void enrolled(UUID player, ReceivedEvent event);

  void moved(UUID player, ReceivedEvent event);

  void left(UUID player, ReceivedEvent event);
}
