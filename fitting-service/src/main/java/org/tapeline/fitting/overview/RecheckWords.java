package org.tapeline.fitting.overview;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.tapeline.fitting.recheck.AirWords;
import org.tapeline.fitting.recheck.RecheckPlan;
import org.tapeline.fitting.recheck.RecheckRules;
import org.tapeline.fitting.recheck.RecheckRules.Check;
import org.tapeline.fitting.roster.Words;
import org.tapeline.fitting.signoff.PlannedChecks;
import org.tapeline.fitting.signoff.Sideline;

/** The re-checks of a player in words. */
final class RecheckWords {
  private RecheckWords() {}

  static PlayerView.Recheck of(Sideline.Looked looked, RecheckPlan plan, Instant now, ZoneId zone) {
    if (looked.facts().isEmpty()) {
      return PlayerView.Recheck.NONE;
    }
    PlannedChecks.Facts facts = looked.facts().get();
    RecheckRules.Field field = facts.causes().field().asOf(now, plan);
    List<String> ahead =
        looked.checks().stream().map(check -> said(check, plan, now, zone)).toList();
    return new PlayerView.Recheck(
        ahead,
        facts.hair().orElse(""),
        AirWords.said(facts.fit(), field),
        AirWords.sealed(facts.fit(), field).orElse(""));
  }

  private static String said(Check check, RecheckPlan plan, Instant now, ZoneId zone) {
    String title = plan.rule(check.trigger()).title();
    String due = check.due(now) ? "due since " : "due on ";
    return title
        + ": "
        + due
        + Words.day(check.dueAt(), zone)
        + check.lapsesAt().map(at -> ", lapses on " + Words.day(at, zone)).orElse("");
  }
}
