package org.tapeline.notify.retention;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** What is kept for how long, and what was deleted. */
@Path("/retention")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class RetentionPage {
  private static final int MOST = 60;
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("yyyy-MM-dd").withZone(ZoneOffset.UTC);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'").withZone(ZoneOffset.UTC);

  private final RetentionPolicy policy;
  private final RetentionRuns runs;

  RetentionPage(RetentionPolicy policy, RetentionRuns runs) {
    this.policy = policy;
    this.runs = runs;
  }

  /** A rule of the policy. */
  public record Rule(String what, long days) {}

  /** What a run deleted. */
  public record Deleted(String at, String what, String olderThan, int count) {}

  @CheckedTemplate(basePath = "retention")
  static class Templates {
    private Templates() {}

    static native TemplateInstance page(List<Rule> rules, List<Deleted> deleted);
  }

  @GET
  public TemplateInstance page() {
    List<Rule> rules =
        Keeping.of(policy).stream()
            .map(keeping -> rule(keeping.what(), keeping.keptFor()))
            .collect(Collectors.toCollection(ArrayList::new));
    rules.add(rule(WhenItIsOldThenDelete.CONTACTS, policy.contactsOfWhoLeft()));
    return Templates.page(rules, runs.newest(MOST).stream().map(RetentionPage::deleted).toList());
  }

  private static Rule rule(String what, Duration keptFor) {
    return new Rule(capital(what), keptFor.toDays());
  }

  private static Deleted deleted(RetentionRuns.Line line) {
    Instant olderThan = line.olderThan();
    return new Deleted(
        TIME.format(line.startedAt()), capital(line.what()), DAY.format(olderThan), line.deleted());
  }

  private static String capital(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }
}
