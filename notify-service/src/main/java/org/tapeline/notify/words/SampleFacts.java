package org.tapeline.notify.words;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Facts as a notice of each template gets them: no more, so that a gap shows when the service
 * starts. The preview shows them.
 */
public final class SampleFacts {
  private static final Instant STARTS = Instant.parse("2025-09-13T15:00:00Z");
  private static final ZoneId ZONE = ZoneId.of("America/Denver");

  private static final Set<String> FOR_STAFF =
      Set.of(
          "restock-request",
          "restock-changed",
          "restock-several",
          "refit-case",
          "not-reached",
          "depot-day",
          "field-day",
          "manager-day");

  private SampleFacts() {}

  /** Whether such a letter goes to staff, with a link to a page behind the log-in. */
  public static boolean forStaff(String template) {
    return FOR_STAFF.contains(template);
  }

  public static Facts of(String template, Phrases phrases) {
    return switch (template) {
      case "do-not-wear-dated",
          "refit-soon-dated",
          "refit-date",
          "refit-changed",
          "refit-chosen",
          "refit-unbooked" ->
          guardian(phrases)
              .with("date", Moments.date(STARTS, ZONE, phrases.language()))
              .with("time", Moments.time(STARTS, ZONE, phrases.language()))
              .with("ends", Moments.time(STARTS.plusSeconds(1200), ZONE, phrases.language()))
              .with("place", "North Field");
      case "do-not-wear-household", "refit-soon-household" -> household(phrases);
      case "recheck-due" ->
          guardian(phrases)
              .with(
                  "dates",
                  phrases.of(
                      "recheck.date",
                      Facts.none()
                          .with("date", Moments.date(STARTS, ZONE, phrases.language()))
                          .with("player", "Mia")));
      case "sign-off-lapsed" -> guardian(phrases);
      case "do-not-wear-undated", "refit-soon-undated", "fitted-again" -> guardian(phrases);
      case "restock-request", "restock-changed" ->
          Facts.none()
              .with("to", "North Field")
              .with("quantity", "3")
              .with("item", TradeWords.item("jaw-pad-15mm", phrases))
              .with("expected", Moments.date(STARTS, ZONE, phrases.language()))
              .with("source", phrases.of("source.none"));
      case "help-asked" ->
          Facts.none()
              .with("player", "Mia")
              .with("place", "North Field")
              .with("date", Moments.date(STARTS, ZONE, phrases.language()))
              .with("time", Moments.time(STARTS, ZONE, phrases.language()));
      case "not-reached" ->
          Facts.none()
              .with("quantity", phrases.of("families.many", Facts.none().with("quantity", "3")))
              .with("place", "North Field");
      case "restock-several" ->
          Facts.none()
              .with("quantity", "3")
              .with("date", Moments.date(STARTS, ZONE, phrases.language()))
              .with("time", Moments.time(STARTS, ZONE, phrases.language()));
      case "depot-day", "field-day", "manager-day" ->
          Facts.none()
              .with("quantity", "3")
              .with("place", "North Field")
              .with("date", Moments.date(STARTS, ZONE, phrases.language()))
              .with("time", Moments.time(STARTS, ZONE, phrases.language()));
      case "refit-case" -> guardian(phrases).with("place", "North Field");
      default -> throw new IllegalArgumentException(template);
    };
  }

  private static Facts household(Phrases phrases) {
    Facts mia = Facts.none().with("player", "Mia");
    Facts leo = Facts.none().with("player", "Leo");
    String dated =
        phrases.of(
            "household.date",
            Facts.none()
                .with("date", Moments.date(STARTS, ZONE, phrases.language()))
                .with("place", "North Field")
                .with("time", "Mia " + Moments.time(STARTS, ZONE, phrases.language())));
    return Facts.none()
        .with("player", NameList.and(List.of("Mia", "Leo"), phrases.language()))
        .with("team", NameList.or(List.of("U10 Hawks", "U8 Bears"), phrases.language()))
        .with("why", phrases.why("fit-failed", mia) + " " + phrases.why("damage", leo))
        .with("dates", dated + " " + phrases.of("household.undated", leo));
  }

  /** Every fact that words may ask for. */
  static Facts all(Phrases phrases) {
    Facts all = Facts.none();
    for (String name : Facts.NAMES) {
      all = all.with(name, "North Field");
    }
    for (String template : Template.NAMES) {
      for (Map.Entry<String, String> fact : of(template, phrases).byName().entrySet()) {
        all = all.with(fact.getKey(), fact.getValue());
      }
    }
    return all.with("days", "30").with("model", "Model A").with("size", "Youth medium");
  }

  private static Facts guardian(Phrases phrases) {
    Facts facts = Facts.none().with("player", "Mia").with("team", "U10 Hawks");
    return facts
        .with("why", phrases.why("fit-failed", facts))
        .with("until", phrases.of("until.do-not-wear"));
  }
}
