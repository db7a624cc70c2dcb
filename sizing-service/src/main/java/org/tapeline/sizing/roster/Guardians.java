package org.tapeline.sizing.roster;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.journal.CurrentState;
import org.tapeline.journal.UuidV7;
import org.tapeline.sizing.roster.RosterLine.GuardianLine;

/**
 * The parents and guardians of the players, here and on the topic {@code people}; always in the
 * caller's transaction. One person stands for all children of a household, and is forgotten with
 * the last of them.
 */
@ApplicationScoped
class Guardians {
  private static final String DETAILS = "org.tapeline.sizing.guardian-details.v1";

  private final CurrentState state;

  Guardians(CurrentState state) {
    this.state = state;
  }

  /** What the topic says of a guardian. */
  public record GuardianDetails(
      UUID guardian,
      String name,
      String email,
      String phone,
      String language,
      List<UUID> players) {}

  /** These guardians and no others stand for the player. True when something changed. */
  boolean keep(UUID player, List<GuardianLine> lines) {
    List<UUID> before = Guardianship.guardiansOf(player);
    List<UUID> now = new ArrayList<>();
    boolean changed = false;
    for (GuardianLine line : lines) {
      GuardianRow row = known(line, before).orElseGet(Guardians::fresh);
      changed |= !says(row, line);
      fill(row, line);
      row.persist();
      if (!now.contains(row.guardian)) {
        now.add(row.guardian);
      }
    }
    if (!before.equals(now)) {
      changed = true;
      Guardianship.replace(player, now);
    }
    Set<UUID> touched = new LinkedHashSet<>(before);
    touched.addAll(now);
    touched.forEach(this::tell);
    return changed;
  }

  /**
   * Known by e-mail address, else by telephone number and name; one with neither is known among the
   * player's own guardians only, since a name alone says little.
   */
  private static Optional<GuardianRow> known(GuardianLine line, List<UUID> ofPlayer) {
    if (line.email() != null) {
      return GuardianRow.withEmail(line.email());
    }
    if (line.phone() != null) {
      return GuardianRow.withPhone(line.phone(), line.name());
    }
    return ofPlayer.stream()
        .map(id -> (GuardianRow) GuardianRow.findById(id))
        .filter(g -> g.email == null && g.phone == null && g.name.equals(line.name()))
        .findFirst();
  }

  private static GuardianRow fresh() {
    GuardianRow row = new GuardianRow();
    row.guardian = UuidV7.next();
    return row;
  }

  private static boolean says(GuardianRow row, GuardianLine line) {
    return line.name().equals(row.name)
        && line.language().equals(row.language)
        && Objects.equals(line.email(), row.email)
        && Objects.equals(line.phone(), row.phone);
  }

  private static void fill(GuardianRow row, GuardianLine line) {
    row.name = line.name();
    row.email = line.email();
    row.phone = line.phone();
    row.language = line.language();
  }

  private void tell(UUID guardian) {
    List<UUID> players = Guardianship.playersOf(guardian);
    if (players.isEmpty()) {
      GuardianRow.deleteById(guardian);
      state.erase(People.TOPIC, DETAILS, guardian.toString());
      return;
    }
    GuardianRow row = GuardianRow.findById(guardian);
    state.put(
        People.TOPIC,
        DETAILS,
        guardian.toString(),
        new GuardianDetails(guardian, row.name, row.email, row.phone, row.language, players));
  }
}
