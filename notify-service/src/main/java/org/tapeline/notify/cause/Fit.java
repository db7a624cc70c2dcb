package org.tapeline.notify.cause;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.notice.NoticeKind;

/**
 * What is known of a player's sign-off and its re-checks, whatever came first.
 *
 * @param word the newest word on the sign-off; empty until one was heard
 * @param dues re-checks that became due, of this sign-off or of earlier ones
 * @param caseOpen whether a re-fit case is open, which tells all that there is to tell
 * @param caseOpenedAt when the newest re-fit case was opened
 */
public record Fit(
    UUID player,
    Optional<Word> word,
    List<Due> dues,
    boolean caseOpen,
    Optional<Instant> caseOpenedAt) {

  /** How a sign-off stands. */
  public enum State {
    SIGNED_OFF,
    WITHDRAWN,
    LAPSED
  }

  /**
   * @param event the id of the event that said so
   * @param why a code such as {@code recheck-overdue}; empty when signed off
   */
  public record Word(UUID event, State state, Instant at, String why) {}

  /**
   * @param event the id of the event that said so
   * @param lapsesAt from then on the sign-off does not hold without the check; empty when it goes
   *     on
   */
  public record Due(UUID event, Instant at, Optional<Instant> lapsesAt) {}

  /**
   * What one person was told of this fit; what was cancelled, or can still be taken back, is left
   * out.
   *
   * @param about the re-check or the lapse
   * @param by the day that was told; for a lapse when it lapsed
   */
  public record Told(NoticeKind kind, UUID about, boolean tried, Optional<Instant> by) {}

  public Fit {
    dues = List.copyOf(dues);
  }

  boolean is(State state) {
    return word.filter(w -> w.state() == state).isPresent();
  }
}
