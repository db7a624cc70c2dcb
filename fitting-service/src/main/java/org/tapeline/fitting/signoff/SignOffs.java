package org.tapeline.fitting.signoff;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.session.FitSessionEvent.FitPassed;
import org.tapeline.fitting.signoff.SignOffCommand.SignOffPlayer;
import org.tapeline.fitting.signoff.SignOffCommand.WithdrawHelmet;
import org.tapeline.fitting.signoff.SignOffEvent.Conditions;
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

  /**
   * A passed fit check is the sign-off. A helmet is signed off for one player: whoever had it
   * before has it no longer.
   */
  public void signOff(FitPassed p, Cause cause) {
    for (SignOffRow row : SignOffRow.liveOn(p.tag())) {
      if (!row.player.equals(p.player())) {
        handle(row.player, new WithdrawHelmet(p.tag(), "handed-on", p.at()), cause);
      }
    }
    SignOffRow.getEntityManager().flush();
    handle(
        p.player(),
        new SignOffPlayer(
            p.player(),
            p.session(),
            p.tag(),
            p.model(),
            p.size(),
            p.field(),
            p.fitter(),
            conditions(p),
            p.protocol(),
            p.protocolVersion(),
            p.at()),
        cause);
  }

  static Conditions conditions(FitPassed p) {
    return new Conditions(
        p.conditions().airCelsius(), p.conditions().altitudeM(), p.conditions().hair());
  }

  /**
   * Decides and records.
   *
   * @return the sign-off that held before, if the command ended it
   */
  public Optional<SignOff.Live> handle(UUID player, SignOffCommand command, Cause cause) {
    StreamName stream = StreamName.of("signoff", player, player);
    List<RecordedEvent> history = journal.load(stream);
    SignOff state = fold(history);
    List<SignOffEvent> events = SignOffDecider.decide(state, command);
    if (events.isEmpty()) {
      return Optional.empty();
    }
    journal.append(
        stream,
        history.size(),
        events.stream().map(e -> (Record) e).toList(),
        cause.step(cause.step() + "/sign-off"));
    events.forEach(SignOffRow::show);
    return state.live();
  }

  /** The sign-off that holds. */
  public Optional<SignOff.Live> live(UUID player) {
    return fold(journal.load(StreamName.of("signoff", player, player))).live();
  }

  private static SignOff fold(List<RecordedEvent> history) {
    SignOff state = SignOff.NONE;
    for (RecordedEvent event : history) {
      state = SignOffDecider.evolve(state, (SignOffEvent) event.data());
    }
    return state;
  }
}
