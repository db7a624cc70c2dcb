package org.tapeline.notify.notice;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import io.smallrye.common.annotation.RunOnVirtualThread;
import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.quarkus.http.Problem;

/** The equipment manager's list of notices, and one notice with all that is known of it. */
@Path("/notices")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class NoticePage {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm:ss 'UTC'").withZone(ZoneOffset.UTC);

  private final NoticeViews views;
  private final Recipients recipients;

  NoticePage(NoticeViews views, Recipients recipients) {
    this.views = views;
    this.recipients = recipients;
  }

  @CheckedTemplate(basePath = "notice")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(
        List<NoticeViews.Line> notices, List<String> states, String chosen, int most, Wording say);

    static native TemplateInstance one(NoticeViews.Whole whole, Wording say);
  }

  /**
   * How codes, times and recipients are said on these pages.
   *
   * @param names by recipient
   */
  public record Wording(Map<String, String> names) {

    public String who(String recipient) {
      return names.get(recipient);
    }

    public String time(Instant at) {
      return TIME.format(at);
    }

    /** {@code refit-date} becomes {@code Re-fit date}. */
    public String word(String code) {
      String words = code.replace('-', ' ').replace("refit", "re-fit");
      return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /** The shared colours of a state; the words stand beside. */
    public String tone(String state) {
      return switch (state) {
        case "sent", "acknowledged" -> "may-wear";
        case "undeliverable" -> "do-not-wear";
        case "raised" -> "check-today";
        default -> "unknown";
      };
    }
  }

  @GET
  public TemplateInstance list(@QueryParam("state") String state) {
    Optional<String> chosen = NoticeStates.filter(state);
    List<NoticeViews.Line> notices = views.list(Optional.empty(), chosen);
    return Templates.list(
        notices, NoticeStates.ALL, chosen.orElse(""), NoticeViews.MOST, wording(notices));
  }

  @GET
  @Path("/{notice}")
  public TemplateInstance one(@PathParam("notice") UUID notice) {
    return views
        .one(notice)
        .map(whole -> Templates.one(whole, wording(List.of(whole.notice()))))
        .orElseThrow(() -> Problem.notFound("There is no such notice. Look in the list."));
  }

  private Wording wording(List<NoticeViews.Line> notices) {
    return new Wording(
        recipients.names(notices.stream().map(NoticeViews.Line::recipient).toList()));
  }
}
