package org.tapeline.fitting.today;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.recheck.RecheckRules.Check;
import org.tapeline.fitting.signoff.WearState;

/**
 * Whom a fitter sees first: by the risk that somebody plays in a helmet that was not checked. A
 * player who has a helmet in hand that must not be worn comes before one who never had any; a check
 * that is overdue for longer before one that is due today.
 */
public final class DayOrder {
  private DayOrder() {}

  /** The groups of the list, the riskiest first. */
  public enum Group {
    DO_NOT_WEAR("Do not wear"),
    NOT_KNOWN("Not known"),
    OVERDUE("Overdue"),
    DUE_TODAY("Due today"),
    NEVER_FITTED("Not fitted yet"),
    DUE_SOON("Due soon");

    private final String said;

    Group(String said) {
      this.said = said;
    }

    public String said() {
      return said;
    }
  }

  /**
   * A player as far as the order asks.
   *
   * @param zone of the player's field
   */
  public record Seen(UUID player, WearState state, List<Check> checks, ZoneId zone) {}

  /**
   * A place in the order.
   *
   * @param since when the first check became, or becomes, due; the end of time for none
   */
  public record Rank(Group group, Instant since, UUID player) implements Comparable<Rank> {
    private static final Comparator<Rank> ORDER =
        Comparator.comparing(Rank::group).thenComparing(Rank::since).thenComparing(Rank::player);

    @Override
    public int compareTo(Rank other) {
      return ORDER.compare(this, other);
    }
  }

  /**
   * Where the player stands on the list; empty when nothing is to be done today or soon.
   *
   * @param soonDays how many days ahead count as soon
   */
  public static Optional<Rank> rank(Seen seen, Instant now, int soonDays) {
    Optional<Instant> first = seen.checks().stream().map(Check::dueAt).min(Instant::compareTo);
    return group(seen, first, now, soonDays)
        .map(group -> new Rank(group, first.orElse(Instant.MAX), seen.player()));
  }

  private static Optional<Group> group(
      Seen seen, Optional<Instant> first, Instant now, int soonDays) {
    LocalDate today = LocalDate.ofInstant(now, seen.zone());
    Optional<LocalDate> day = first.map(at -> LocalDate.ofInstant(at, seen.zone()));
    return switch (seen.state().code()) {
      case "do-not-wear" ->
          Optional.of(
              seen.state().status().equals("never-fitted")
                  ? Group.NEVER_FITTED
                  : Group.DO_NOT_WEAR);
      case "check-today" ->
          Optional.of(day.filter(today::isAfter).isPresent() ? Group.OVERDUE : Group.DUE_TODAY);
      case "may-wear" ->
          day.filter(d -> !d.isAfter(today.plusDays(soonDays)))
              .map(d -> d.isAfter(today) ? Group.DUE_SOON : Group.DUE_TODAY);
      default -> Optional.of(Group.NOT_KNOWN);
    };
  }
}
