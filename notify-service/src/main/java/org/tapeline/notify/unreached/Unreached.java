package org.tapeline.notify.unreached;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.phone.Telephone;
import org.tapeline.notify.words.TradeWords;

/**
 * A guardian whom somebody of the staff has to reach, with all that is open.
 *
 * @param since when the oldest of it became people's business
 * @param whys codes of why channels did not do; {@code not-confirmed} when one took it
 * @param tried what was done so far, in the order of time
 * @param notices what is open, oldest first
 * @param fields of the cases, or of the children
 */
public record Unreached(
    UUID guardian,
    String name,
    Optional<Telephone> phone,
    List<Child> children,
    Urgency urgency,
    Instant since,
    Set<String> whys,
    List<Tried> tried,
    List<UUID> notices,
    Set<String> fields) {

  /**
   * A child as staff know it: no family name.
   *
   * @param number empty while it is not known here
   * @param team the team's code
   */
  public record Child(UUID player, String firstName, String number, String team) {
    public String teamName() {
      return TradeWords.team(team);
    }
  }

  /**
   * A try or a step of the escalation.
   *
   * @param how a channel's or a step's code
   * @param result the outcome of a try; empty for a step
   */
  public record Tried(Instant at, String how, Optional<String> result) {}
}
