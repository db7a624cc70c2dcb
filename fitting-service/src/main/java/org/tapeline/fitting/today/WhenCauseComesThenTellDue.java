package org.tapeline.fitting.today;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.helmet.DamageSeen;
import org.tapeline.fitting.recheck.CauseNoted;
import org.tapeline.fitting.roster.HeadNews;
import org.tapeline.fitting.signoff.SignOffRow;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;

/** Hair, weather, a head or damage: what becomes due by it is told in the same transaction. */
@ApplicationScoped
public class WhenCauseComesThenTellDue implements HeadNews, DamageSeen, CauseNoted {
  private final DueChecks due;

  WhenCauseComesThenTellDue(DueChecks due) {
    this.due = due;
  }

  @Override
  public void head(UUID player, ReceivedEvent event) {
    due.look(List.of(player), event.correlationId());
  }

  @Override
  public void cosmetic(String tag, ReceivedEvent event) {
    List<UUID> players = SignOffRow.liveOn(tag).stream().map(row -> row.player).toList();
    due.look(players, event.correlationId());
  }

  @Override
  public void noted(Collection<UUID> players, Cause cause) {
    due.look(players, cause.correlationId());
  }
}
