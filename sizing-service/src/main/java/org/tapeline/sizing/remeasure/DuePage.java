package org.tapeline.sizing.remeasure;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.transaction.Transactional;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.time.Clock;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.sizing.remeasure.Heads.Grown;

/** Whose head should be measured again, and when. */
@Path("/due")
@RolesAllowed({"fitter", "equipment-manager"})
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class DuePage {
  private static final int MOST = 300;
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("MMMM d, uuuu", Locale.US);

  private final Heads heads;
  private final Caller caller;
  private final Clock clock;

  DuePage(Heads heads, Caller caller, Clock clock) {
    this.heads = heads;
    this.caller = caller;
    this.clock = clock;
  }

  @CheckedTemplate(basePath = "remeasure")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<Line> lines, String seasonEnd, boolean more);

    static native TemplateInstance one(Line line, String seasonEnd);
  }

  /** A player in words. */
  public record Line(Grown g, boolean due) {
    public String measured() {
      return DAY.format(g.measuredOn());
    }

    public String again() {
      return DAY.format(g.outgrowth().remeasureOn());
    }
  }

  @GET
  @Transactional
  public TemplateInstance list() {
    List<Line> lines =
        heads.all().stream()
            .filter(g -> caller.mayWorkAt(g.field()))
            .sorted(
                Comparator.comparing((Grown g) -> g.outgrowth().remeasureOn())
                    .thenComparing(Grown::number))
            .map(this::line)
            .toList();
    boolean more = lines.size() > MOST;
    return Templates.list(
        lines.subList(0, Math.min(MOST, lines.size())), DAY.format(heads.seasonEnd()), more);
  }

  /** A part of the player's page. */
  @GET
  @Path("/{player}")
  @Transactional
  public String one(@PathParam("player") UUID player) {
    return heads
        .one(player)
        .filter(g -> caller.mayWorkAt(g.field()))
        .map(g -> Templates.one(line(g), DAY.format(heads.seasonEnd())).render())
        .orElse("");
  }

  private Line line(Grown g) {
    return new Line(g, !g.outgrowth().remeasureOn().isAfter(LocalDate.now(clock)));
  }
}
