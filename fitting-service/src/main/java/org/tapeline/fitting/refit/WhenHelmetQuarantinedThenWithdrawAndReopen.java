package org.tapeline.fitting.refit;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.helmet.PulledHelmet;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.session.Need;
import org.tapeline.fitting.signoff.SignOff;
import org.tapeline.fitting.signoff.SignOffCommand.WithdrawHelmet;
import org.tapeline.fitting.signoff.SignOffRow;
import org.tapeline.fitting.signoff.SignOffs;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;

/**
 * A helmet that must not be worn (quarantined, on hold, retired) ends the sign-off on it, and
 * whoever had it gets a re-fit case: the player signed off in it, and the one who holds it by
 * inventory's records unless that player was fitted in another helmet meanwhile.
 */
@ApplicationScoped
public class WhenHelmetQuarantinedThenWithdrawAndReopen implements PulledHelmet {
  private final SignOffs signOffs;
  private final RefitCases cases;
  private final Clock clock;

  WhenHelmetQuarantinedThenWithdrawAndReopen(SignOffs signOffs, RefitCases cases, Clock clock) {
    this.signOffs = signOffs;
    this.cases = cases;
    this.clock = clock;
  }

  @Override
  public void pulled(HelmetCopy helmet, String why, Optional<UUID> holder, ReceivedEvent event) {
    Set<UUID> concerned = new LinkedHashSet<>();
    SignOffRow.liveOn(helmet.tag).forEach(row -> concerned.add(row.player));
    holder.ifPresent(concerned::add);
    for (UUID player : concerned) {
      PlayerCopy.locked(player);
      Cause cause = Cause.of(event, why + "/" + player);
      signOffs.handle(player, new WithdrawHelmet(helmet.tag, why, clock.instant()), cause);
      Optional<SignOff.Live> elsewhere = signOffs.live(player);
      if (elsewhere.isEmpty()) {
        cases.need(player, ask(helmet, why), cause);
      }
    }
  }

  private static RefitRules.Ask ask(HelmetCopy helmet, String why) {
    return new RefitRules.Ask(
        why, Optional.of(helmet.tag), List.of(Need.helmet(helmet.model, helmet.size)));
  }
}
