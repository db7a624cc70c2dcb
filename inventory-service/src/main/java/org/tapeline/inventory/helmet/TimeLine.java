package org.tapeline.inventory.helmet;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.tapeline.journal.RecordedEvent;

/** A helmet's life in words, the newest first. */
public final class TimeLine {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("MMM d, uuuu, h:mm a", Locale.US);

  private TimeLine() {}

  /** A line of it. */
  public record Line(String when, String what) {}

  static List<Line> of(List<RecordedEvent> life, ZoneId zone) {
    return life.reversed().stream()
        .map(e -> (HelmetEvent) e.data())
        .map(e -> new Line(MOMENT.format(e.at().atZone(zone)), say(e)))
        .toList();
  }

  private static String say(HelmetEvent event) {
    return switch (event) {
      case HelmetEvent.HelmetOrdered e -> "Ordered for " + e.place();
      case HelmetEvent.HelmetReceived e -> "Received at " + e.place();
      case HelmetEvent.HelmetIssued e -> "Issued to a player at " + e.place();
      case HelmetEvent.IssueRefused e -> "Not issued: " + Words.code(e.why());
      case HelmetEvent.HelmetReturned e -> "Returned at " + e.place();
      case HelmetEvent.HelmetMoved e -> "Moved from " + e.from() + " to " + e.to();
      case HelmetEvent.DamageReported e ->
          Words.code(e.severity())
              + " damage reported by "
              + e.by()
              + ": "
              + Words.code(e.where())
              + ", "
              + Words.code(e.what()).toLowerCase(Locale.ROOT);
      case HelmetEvent.HelmetQuarantined e -> "Taken out of use: " + Words.code(e.why());
      case HelmetEvent.HelmetInspected e ->
          "Inspected by " + e.by() + ": " + Words.code(e.outcome());
      case HelmetEvent.HelmetHeld e -> "Put on hold";
      case HelmetEvent.HelmetFreed e ->
          "Hold lifted: " + Words.code(e.state()).toLowerCase(Locale.ROOT);
      case HelmetEvent.HelmetSentOut e -> "Sent to the reconditioner from " + e.place();
      case HelmetEvent.HelmetCameBack e -> "Back from the reconditioner at " + e.place();
      case HelmetEvent.HelmetRecertified e ->
          "Certified until " + e.certifiedUntil() + ", read by " + e.by();
      case HelmetEvent.HelmetRetired e -> "Retired: " + Words.code(e.why());
    };
  }
}
