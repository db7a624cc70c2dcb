package org.tapeline.fitting.evidence;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.session.FitSessionEvent;
import org.tapeline.fitting.signoff.Sideline;
import org.tapeline.fitting.signoff.SignOffEvent;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/** Sign-offs as the journal tells them; nothing here is taken from a table made for reading. */
@ApplicationScoped
public class Evidences {
  private final Journal journal;
  private final Sideline sideline;

  Evidences(Journal journal, Sideline sideline) {
    this.journal = journal;
    this.sideline = sideline;
  }

  /** Empty when there is no such session or it did not end with a fit. */
  public Optional<Evidence> of(UUID session) {
    return Evidence.of(
        journal.load(StreamName.of("session", session, session)).stream()
            .map(e -> (FitSessionEvent) e.data())
            .toList());
  }

  /** Every sign-off that the player ever had, newest first. */
  public List<PastSignOff> historyOf(UUID player) {
    return PastSignOff.of(
            journal.load(StreamName.of("signoff", player, player)).stream()
                .map(e -> (SignOffEvent) e.data())
                .toList())
        .reversed();
  }

  /** Whether that very sign-off holds now. */
  public Standing standing(Evidence evidence) {
    Optional<PlayerCopy> player = PlayerCopy.findByIdOptional(evidence.player());
    Optional<PastSignOff> signOff =
        historyOf(evidence.player()).stream()
            .filter(s -> s.session().equals(evidence.session()))
            .findFirst();
    return Standing.of(signOff, player.map(p -> sideline.line(p).state()));
  }
}
