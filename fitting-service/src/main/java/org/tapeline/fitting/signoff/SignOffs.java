package org.tapeline.fitting.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffLapsed;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffWithdrawn;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.RecordedEvent;
import org.tapeline.journal.StreamName;

/** The sign-offs, one stream a player, always in the caller's transaction. */
@ApplicationScoped
public class SignOffs {
  private final Journal journal;

  SignOffs(Journal journal) {
    this.journal = journal;
  }

  /** A passed fit check is the sign-off. */
  public void signOff(FitPassed p, Cause cause) {
    append(
        p.player(),
        new SignedOff(
            p.player(), p.session(), p.tag(), p.model(), p.size(), p.field(), p.fitter(), p.at()),
        cause.step("sign-off"));
  }

  /** The sign-off that holds. */
  public Optional<SignOff.Live> live(UUID player) {
    return state(journal.load(stream(player))).live();
  }

  /**
   * Withdraws the sign-off, if there is one.
   *
   * @return what was withdrawn
   */
  public Optional<SignOff.Live> withdraw(UUID player, String why, Instant at, Cause cause) {
    Optional<SignOff.Live> live = live(player);
    live.ifPresent(
        l ->
            append(player, new SignOffWithdrawn(player, l.tag(), why, at), cause.step("withdraw")));
    return live;
  }

  private void append(UUID player, SignOffEvent event, Cause cause) {
    List<RecordedEvent> history = journal.load(stream(player));
    journal.append(stream(player), history.size(), List.of((Record) event), cause);
    show(event);
  }

  private static SignOff state(List<RecordedEvent> history) {
    SignOff state = SignOff.NEVER;
    for (RecordedEvent event : history) {
      state = SignOff.evolve(state, (SignOffEvent) event.data());
    }
    return state;
  }

  private static StreamName stream(UUID player) {
    return StreamName.of("signoff", player, player);
  }

  private static void show(SignOffEvent event) {
    SignOffRow row = SignOffRow.findById(event.player());
    if (row == null) {
      row = new SignOffRow();
      row.player = event.player();
    }
    switch (event) {
      case SignedOff e -> row.signedOff(e);
      case SignOffWithdrawn e -> row.ended("withdrawn", e.why(), e.at());
      case SignOffLapsed e -> row.ended("lapsed", e.why(), e.at());
    }
    row.persist();
  }
}
