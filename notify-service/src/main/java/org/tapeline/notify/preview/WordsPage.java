package org.tapeline.notify.preview;

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
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Template;
import org.tapeline.notify.words.TradeWords;

/** The words of all notices, to be looked at as their readers get them. */
@Path("/words")
@RolesAllowed("equipment-manager")
@Produces(MediaType.TEXT_HTML)
@RunOnVirtualThread
public class WordsPage {
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm 'UTC'").withZone(ZoneOffset.UTC);

  private final Previews previews;

  WordsPage(Previews previews) {
    this.previews = previews;
  }

  @CheckedTemplate(basePath = "preview")
  static class Templates {
    private Templates() {}

    static native TemplateInstance list(List<Line> lines);

    static native TemplateInstance one(
        Preview shown, List<Language> languages, List<Choice> notices, String notice, boolean lost);
  }

  /** A template in all its languages. */
  public record Line(String template, String title, int version, List<Preview> previews) {}

  /** A notice that can be chosen. */
  public record Choice(String notice, String label) {}

  @GET
  public TemplateInstance list() {
    List<Line> lines = new ArrayList<>();
    for (String template : Template.NAMES) {
      List<Preview> shown =
          Arrays.stream(Language.values()).map(l -> previews.sample(template, l)).toList();
      lines.add(new Line(template, TradeWords.title(template), shown.getFirst().version(), shown));
    }
    return Templates.list(lines);
  }

  @GET
  @Path("/{template}")
  public TemplateInstance one(
      @PathParam("template") String template,
      @QueryParam("language") String language,
      @QueryParam("notice") String notice) {
    if (!Template.NAMES.contains(template)) {
      throw Problem.notFound("There are no such words. Look in the list of words.");
    }
    Language chosen = language(language);
    Optional<UUID> id = notice(notice);
    Optional<Preview> real = id.flatMap(n -> previews.real(n, template, chosen));
    return Templates.one(
        real.orElseGet(() -> previews.sample(template, chosen)),
        List.of(Language.values()),
        choices(template),
        id.map(UUID::toString).orElse(""),
        id.isPresent() && real.isEmpty());
  }

  private List<Choice> choices(String template) {
    return previews.newest(template).stream()
        .map(
            raised ->
                new Choice(
                    raised.notice().toString(),
                    TIME.format(raised.raisedAt())
                        + ", "
                        + raised.language()
                        + ", "
                        + raised.state()))
        .toList();
  }

  private static Language language(String code) {
    if (code == null || code.isBlank()) {
      return Language.ENGLISH;
    }
    return Language.of(code)
        .orElseThrow(
            () ->
                Problem.badRequest(
                    "unknown-language",
                    "Words exist in English (en) and Spanish (es).",
                    new Problem.FieldError("language", code)));
  }

  private static Optional<UUID> notice(String id) {
    if (id == null || id.isBlank()) {
      return Optional.empty();
    }
    try {
      return Optional.of(UUID.fromString(id));
    } catch (IllegalArgumentException e) {
      throw Problem.badRequest(
          "not-a-notice",
          "A notice has a UUID. Choose one from the list.",
          new Problem.FieldError("notice", id));
    }
  }
}
