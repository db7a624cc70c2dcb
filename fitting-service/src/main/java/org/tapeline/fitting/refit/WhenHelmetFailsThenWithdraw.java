package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.helmet.PulledHelmet;
import org.tapeline.fitting.session.Need;
import org.tapeline.fitting.signoff.SignOff;
import org.tapeline.fitting.signoff.SignOffRow;
import org.tapeline.fitting.signoff.SignOffs;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;

/** A helmet that must not be worn ends every sign-off on it, and opens a re-fit case for each. */
@ApplicationScoped
public class WhenHelmetFailsThenWithdraw implements PulledHelmet {
  private final SignOffs signOffs;
  private final RefitCases cases;
  private final Clock clock;

  WhenHelmetFailsThenWithdraw(SignOffs signOffs, RefitCases cases, Clock clock) {
    this.signOffs = signOffs;
    this.cases = cases;
    this.clock = clock;
  }

  @Override
  public void helmetFailed(String tag, String why, ReceivedEvent event) {
    for (SignOffRow row : SignOffRow.liveOn(tag)) {
      withdraw(row.player, why, event);
    }
  }

  /** Only when the refused sign-off is still the one that holds. */
  @Override
  public void issueRefused(UUID player, UUID session, String tag, ReceivedEvent event) {
    Optional<SignOff.Live> live = signOffs.live(player);
    if (live.isPresent() && live.get().session().equals(session)) {
      withdraw(player, "issue-refused", event);
    }
  }

  private void withdraw(UUID player, String why, ReceivedEvent event) {
    Cause cause = Cause.of(event, why);
    Optional<SignOff.Live> live = signOffs.withdraw(player, why, clock.instant(), cause);
    live.ifPresent(
        l ->
            cases.open(
                player,
                why,
                Optional.of(l.tag()),
                List.of(Need.helmet(l.model(), l.size())),
                cause));
  }
}
