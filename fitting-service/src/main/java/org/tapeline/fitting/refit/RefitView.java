package org.tapeline.fitting.refit;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.fitting.fitday.Booking;
import org.tapeline.fitting.roster.Words;
import org.tapeline.fitting.session.Need;

/** An open re-fit case for pages and programs. */
public record RefitView(
    UUID refitCase,
    UUID player,
    String field,
    String team,
    String urgency,
    String why,
    Optional<String> tag,
    List<Needed> needs,
    Optional<Booking> booking,
    Instant openedAt) {

  /**
   * What it needs.
   *
   * @param tag the helmet that is kept for it
   * @param arrivesAt when it is there; empty while that is not known
   * @param missing nothing is kept yet: it is ordered
   */
  public record Needed(
      Need need, Optional<String> tag, Optional<Instant> arrivesAt, boolean missing) {
    public String said() {
      String what =
          need.needsHelmet()
              ? Words.model(need.model().get()) + " " + Words.size(need.size().get())
              : Words.item(need.item().get());
      return what + tag.map(t -> " (" + t + " is kept)").orElse(missing ? " (ordered)" : "");
    }
  }

  static RefitView of(RefitCaseRow row, Optional<Booking> booking) {
    List<Needed> needs =
        RefitNeedRow.of(row.refitCase).stream()
            .map(
                n ->
                    new Needed(
                        n.need(),
                        Optional.ofNullable(n.tag),
                        Optional.ofNullable(n.arrivesAt),
                        n.missing))
            .toList();
    return new RefitView(
        row.refitCase,
        row.player,
        row.field,
        row.team,
        row.urgency,
        row.why,
        Optional.ofNullable(row.tag),
        needs,
        booking,
        row.openedAt);
  }

  public String whySaid() {
    return switch (why) {
      case "fit-failed" -> "the fit check failed";
      case "damage" -> "the helmet is damaged";
      case "hold" -> "the helmet is on hold";
      case "issue-refused" -> "the helmet could not be issued";
      case "pass-taken-back" -> "the fit check was recorded by mistake";
      case "retired" -> "the helmet is retired";
      case "inspection", "suspected-concussion" -> "the helmet went to inspection";
      default -> why.replace('-', ' ');
    };
  }

  public String needsSaid() {
    return needs.stream().map(Needed::said).collect(Collectors.joining(", "));
  }

  /** Day, hour and place; empty while it waits. */
  public String bookedSaid() {
    return booking
        .map(
            b -> {
              ZoneId zone = ZoneId.of(b.zone());
              String from = Words.time(b.startsAt(), zone);
              return Words.day(b.startsAt(), zone) + ", " + from + ", at " + b.field();
            })
        .orElse("");
  }
}
