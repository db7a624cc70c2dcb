package org.tapeline.notify.notice;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Duration;
import java.util.List;
import java.util.stream.Collectors;
import org.tapeline.notify.notice.CauseName.Recipient;
import org.tapeline.notify.words.TradeWords;

/** The table of causes, to be read by whoever runs notices. */
@Path("/causes")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class CausePage {
  private final CauseTable table;

  CausePage(CauseTable table) {
    this.table = table;
  }

  /** A line in words. */
  public record Line(
      String when,
      String notice,
      String to,
      String urgency,
      String window,
      boolean household,
      String overtakenBy) {

    static Line of(CauseRule rule) {
      String by =
          rule.overtakenBy().stream()
              .map(kind -> TradeWords.said(kind.code()))
              .collect(Collectors.joining(", "));
      return new Line(
          rule.when(),
          TradeWords.said(rule.kind().code()),
          rule.to().stream()
              .map(Recipient::code)
              .map(TradeWords::said)
              .sorted()
              .collect(Collectors.joining(", ")),
          rule.urgency().map(u -> TradeWords.said(u.code())).orElse("that of the case"),
          wait(rule.window()),
          rule.household(),
          rule.overtakenByItsDate() ? by + (by.isEmpty() ? "" : ", ") + "its own date" : by);
    }

    private static String wait(Duration window) {
      if (window.isZero()) {
        return "at once";
      }
      return window.toSeconds() < 60 ? window.toSeconds() + " s" : window.toMinutes() + " min";
    }
  }

  @CheckedTemplate(basePath = "notice")
  static class Templates {
    private Templates() {}

    static native TemplateInstance causes(List<Line> lines, int version);
  }

  @GET
  public TemplateInstance table() {
    return Templates.causes(table.rules().stream().map(Line::of).toList(), table.version());
  }
}
