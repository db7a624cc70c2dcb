package org.tapeline.sizing.roster;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.sizing.advice.Hair;
import org.tapeline.sizing.advice.SizeAdvice;
import org.tapeline.sizing.growth.HeadForAge;
import org.tapeline.sizing.reading.Measurement;

/** What somebody wants of a player. */
public sealed interface PlayerCommand {
  UUID player();

  /** The roster says that the player plays there. */
  record PutOnRoster(UUID player, String number, String team, String field)
      implements PlayerCommand {}

  /** The roster no longer has the player. */
  record TakeOffRoster(UUID player) implements PlayerCommand {}

  /**
   * @param forAge where the head lies among children of the age; empty when the age is not known
   * @param confirmed the measurer has seen that the value is unusual and stands by it
   */
  record RecordHead(
      UUID player,
      Measurement measurement,
      Optional<HeadForAge> forAge,
      Hair hair,
      boolean confirmed,
      String by,
      Instant at)
      implements PlayerCommand {}

  /**
   * A recorded head was not right: these are its readings.
   *
   * @param corrects version of the event by which the head was recorded
   * @param offered it is among the newest heads, which this person may correct
   * @param why any reason but the wrong player: then the head is withdrawn
   * @param by staff id of who corrects
   */
  record CorrectHead(
      UUID player,
      long corrects,
      boolean offered,
      Measurement measurement,
      Optional<HeadForAge> forAge,
      Hair hair,
      boolean confirmed,
      CorrectionReason why,
      String by,
      Instant at)
      implements PlayerCommand {

    /** Refuses readings of this player when the head was another's. */
    public CorrectHead {
      if (why == CorrectionReason.WRONG_PLAYER) {
        throw new IllegalArgumentException("The head of another player is withdrawn");
      }
    }
  }

  /**
   * A recorded head was another player's.
   *
   * @param corrects version of the event by which the head was recorded
   * @param offered it is among the newest heads, which this person may correct
   */
  record WithdrawHead(UUID player, long corrects, boolean offered, String by, Instant at)
      implements PlayerCommand {}

  /** The advice as the charts in force give it; none when no head is left to rest on. */
  record Advise(UUID player, List<SizeAdvice> advice) implements PlayerCommand {}
}
