package org.tapeline.sizing.roster;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tapeline.sizing.roster.PlayerEvent.ModelAdvice;
import org.tapeline.sizing.roster.PlayerEvent.SizeAdvised;
import org.tapeline.sizing.units.Millimetres;

/**
 * A player as the events tell.
 *
 * @param version how many events there were, so the version of the newest
 * @param heads oldest first, as they were corrected
 * @param advised the newest advice
 */
public record PlayerState(
    long version,
    boolean enrolled,
    String team,
    String field,
    List<KnownHead> heads,
    Optional<SizeAdvised> advised) {

  public static final PlayerState NEW =
      new PlayerState(0, false, "", "", List.of(), Optional.empty());

  /**
   * A head as it is held to be now.
   *
   * @param version that of the event by which it was recorded
   * @param withdrawn it was another player's
   */
  public record KnownHead(long version, Millimetres value, boolean withdrawn) {
    private KnownHead corrected(Optional<Double> mm) {
      return new KnownHead(version, mm.map(Millimetres::new).orElse(value), mm.isEmpty());
    }
  }

  public PlayerState {
    heads = List.copyOf(heads);
  }

  /** The newest that was not withdrawn. */
  Optional<Millimetres> head() {
    return headBefore(Long.MAX_VALUE);
  }

  /** The newest before that version that was not withdrawn. */
  Optional<Millimetres> headBefore(long version) {
    return heads.stream()
        .filter(head -> head.version() < version && !head.withdrawn())
        .reduce((older, newer) -> newer)
        .map(KnownHead::value);
  }

  Optional<KnownHead> headOf(long version) {
    return heads.stream().filter(head -> head.version() == version).findFirst();
  }

  List<ModelAdvice> advice() {
    return advised.map(SizeAdvised::advice).orElse(List.of());
  }

  PlayerState at(boolean onRoster, String nowTeam, String nowField) {
    return new PlayerState(version + 1, onRoster, nowTeam, nowField, heads, advised);
  }

  PlayerState measured(double mm) {
    KnownHead head = new KnownHead(version + 1, new Millimetres(mm), false);
    return with(Stream.concat(heads.stream(), Stream.of(head)).toList());
  }

  /** Withdrawn without a new value. */
  PlayerState corrected(long corrects, Optional<Double> mm) {
    return with(heads.stream().map(h -> h.version() == corrects ? h.corrected(mm) : h).toList());
  }

  PlayerState advised(SizeAdvised now) {
    return new PlayerState(version + 1, enrolled, team, field, heads, Optional.of(now));
  }

  private PlayerState with(List<KnownHead> now) {
    return new PlayerState(version + 1, enrolled, team, field, now, advised);
  }
}
