package org.tapeline.inventory.helmet;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A helmet's life in words, the newest first: its own events, and the fits in it. */
public final class TimeLine {
  private static final DateTimeFormatter MOMENT =
      DateTimeFormatter.ofPattern("MMM d, uuuu, h:mm a", Locale.US);
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("MMM d, uuuu", Locale.US);

  private TimeLine() {}

  /**
   * A line of it.
   *
   * @param kind what it is about, in a word or two
   * @param player whom it concerns; the name is never kept here
   * @param href where there is more of it; empty where there is not
   */
  public record Line(
      Instant at, String when, String kind, String what, Optional<UUID> player, String href) {}

  /** What a line says, before it has its time. */
  private record Told(String kind, String what, Optional<UUID> player, String href) {
    static Told of(String kind, String what) {
      return new Told(kind, what, Optional.empty(), "");
    }

    static Told of(String kind, String what, Optional<UUID> player) {
      return new Told(kind, what, player, "");
    }
  }

  /** What happened at one moment keeps its order: a fit comes before what it led to. */
  static List<Line> of(List<HelmetEvent> life, List<HelmetFit> fits, ZoneId zone) {
    return Stream.concat(
            fits.stream().map(f -> line(f.at(), tell(f), zone)),
            life.stream().map(e -> line(e.at(), tell(e), zone)))
        .sorted(Comparator.comparing(Line::at))
        .toList()
        .reversed();
  }

  private static Line line(Instant at, Told told, ZoneId zone) {
    String when = MOMENT.format(at.atZone(zone));
    return new Line(at, when, told.kind(), told.what(), told.player(), told.href());
  }

  private static Told tell(HelmetFit fit) {
    String where = fit.place().map(place -> " at " + place).orElse("");
    String what =
        switch (fit.kind()) {
          case TRIED -> "Tried on";
          case PASSED -> "Fit passed" + where;
          case FAILED -> "Fit failed" + where + because(fit.why());
          case SIGNED_OFF -> "Signed off" + where + by(fit.why());
          case WITHDRAWN -> "Sign-off withdrawn" + because(fit.why());
          case LAPSED -> "Sign-off lapsed" + because(fit.why());
        };
    return Told.of("Fit", what, Optional.of(fit.player()));
  }

  /** The protocol with its version, where it was stated. */
  private static String by(String protocol) {
    return protocol.isEmpty() ? "" : " by the fit protocol " + protocol;
  }

  /** The codes in words. */
  private static String because(String why) {
    return why.isEmpty()
        ? ""
        : ": "
            + Arrays.stream(why.split(","))
                .map(code -> Words.code(code).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(", "));
  }

  private static Told tell(HelmetEvent event) {
    return switch (event) {
      case HelmetEvent.HelmetOrdered e ->
          Told.of("Stock", "Ordered for " + e.place() + day(", expected on ", e.expectedOn()));
      case HelmetEvent.HelmetReceived e ->
          Told.of(
              "Stock", "Received at " + e.place() + day(", certified until ", e.certifiedUntil()));
      case HelmetEvent.HelmetIssued e ->
          Told.of("Player", "Issued to a player at " + e.place(), Optional.of(e.player()));
      case HelmetEvent.IssueRefused e ->
          Told.of("Player", "Not issued: " + Words.code(e.why()), Optional.of(e.player()));
      case HelmetEvent.HelmetReturned e ->
          Told.of("Player", "Returned at " + e.place(), Optional.of(e.player()));
      case HelmetEvent.HelmetMoved e ->
          Told.of("Stock", "Moved from " + e.from() + " to " + e.to());
      case HelmetEvent.DamageReported e -> damage(e);
      case HelmetEvent.HelmetQuarantined e ->
          Told.of("Damage", "Taken out of use: " + Words.code(e.why()), e.player());
      case HelmetEvent.HelmetInspected e -> inspected(e);
      case HelmetEvent.HelmetHeld e ->
          new Told("Hold", "Put on hold", e.player(), "/inventory/holds/" + e.hold());
      case HelmetEvent.HelmetFreed e ->
          new Told(
              "Hold",
              "Hold lifted: " + Words.code(e.state()).toLowerCase(Locale.ROOT),
              Optional.empty(),
              "/inventory/holds/" + e.hold());
      case HelmetEvent.HelmetSentOut e ->
          Told.of("Reconditioning", "Sent to the reconditioner from " + e.place());
      case HelmetEvent.HelmetCameBack e ->
          Told.of("Reconditioning", "Back from the reconditioner at " + e.place());
      case HelmetEvent.HelmetRecertified e -> certified(e);
      case HelmetEvent.HelmetRetired e -> Told.of("End", "Retired: " + Words.code(e.why()));
    };
  }

  private static Told damage(HelmetEvent.DamageReported e) {
    String what =
        Words.code(e.severity())
            + " damage reported by "
            + e.by()
            + ": "
            + Words.code(e.where())
            + ", "
            + Words.code(e.what()).toLowerCase(Locale.ROOT);
    String report = "/inventory/helmets/" + e.tag() + "/damage/" + e.report();
    return new Told("Damage", what, e.player(), report);
  }

  private static Told inspected(HelmetEvent.HelmetInspected e) {
    String found = because(String.join(",", e.findings()));
    String parts = e.parts().isEmpty() ? "" : "; put on" + because(String.join(",", e.parts()));
    String what = "Inspected by " + e.by() + ": " + Words.code(e.outcome());
    return Told.of("Inspection", what + found.replaceFirst("^: ", "; found: ") + parts);
  }

  private static Told certified(HelmetEvent.HelmetRecertified e) {
    String how =
        switch (e.how()) {
          case "reconditioned" -> "after reconditioning, noted by " + e.by();
          case "policy" -> "by the policy, as no label was read";
          default -> "read by " + e.by();
        };
    return Told.of(
        "Certification", "Certified until " + DAY.format(e.certifiedUntil()) + ", " + how);
  }

  private static String day(String words, Optional<LocalDate> day) {
    return day.map(d -> words + DAY.format(d)).orElse("");
  }
}
