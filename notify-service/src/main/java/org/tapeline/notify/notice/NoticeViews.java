package org.tapeline.notify.notice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;

/** Reads notices for pages and for other programs. */
@ApplicationScoped
public class NoticeViews {
  /** A list shows at most this many, newest first. */
  public static final int MOST = 200;

  /** The part of an address that opens a person's page without log-in. */
  private static final String TOKEN = "/notify/(n|c|unsubscribe)/[A-Za-z0-9_-]+";

  private final NoticeTexts texts;

  NoticeViews(NoticeTexts texts) {
    this.texts = texts;
  }

  /**
   * One notice in a list.
   *
   * @param why why it was given up or cancelled; {@code null} otherwise
   */
  public record Line(
      UUID notice,
      String kind,
      String recipient,
      String state,
      String urgency,
      String language,
      UUID refitCase,
      List<UUID> players,
      Instant raisedAt,
      Instant changedAt,
      int attempts,
      String why,
      UUID correlationId) {

    static Line of(NoticeRow row) {
      return new Line(
          row.notice,
          row.kind,
          row.recipient,
          row.state,
          row.urgency,
          row.language,
          row.refitCase,
          row.players.stream().sorted().toList(),
          row.raisedAt,
          row.changedAt,
          row.attempts,
          row.why,
          row.correlationId);
    }
  }

  /** One try; no outcome: it runs, or was cut off. */
  public record Try(
      int attempt,
      String channel,
      Instant startedAt,
      Instant endedAt,
      String outcome,
      String code) {

    static Try of(NoticeTryRow row) {
      return new Try(row.attempt, row.channel, row.startedAt, row.endedAt, row.outcome, row.code);
    }
  }

  /**
   * Everything about one notice.
   *
   * @param subject and {@code text}: {@code null} once they were erased; the reader's own links are
   *     left out of it
   */
  public record Whole(
      Line notice,
      String template,
      int templateVersion,
      List<UUID> causes,
      List<Try> tries,
      String subject,
      String text,
      boolean calendar) {}

  /** The newest notices of a case, in a state; both filters may be left out. */
  @Transactional
  public List<Line> list(Optional<UUID> refitCase, Optional<String> state) {
    List<String> conditions = new ArrayList<>(List.of("1 = 1"));
    Map<String, Object> parameters = new HashMap<>();
    refitCase.ifPresent(
        id -> {
          conditions.add(
              "notice in (select c.notice from NoticeCoverRow c where c.refitCase = :refitCase)"
                  + " or refitCase = :refitCase");
          parameters.put("refitCase", id);
        });
    state.ifPresent(
        word -> {
          conditions.add("state = :state");
          parameters.put("state", word);
        });
    return NoticeRow.<NoticeRow>find(
            "(" + String.join(") and (", conditions) + ")" + " order by raisedAt desc, notice desc",
            parameters)
        .page(0, MOST)
        .list()
        .stream()
        .map(Line::of)
        .toList();
  }

  @Transactional
  public Optional<Whole> one(UUID notice) {
    return NoticeRow.<NoticeRow>findByIdOptional(notice).map(this::whole);
  }

  private Whole whole(NoticeRow row) {
    Optional<NoticeTextRow> text = texts.of(row.notice);
    return new Whole(
        Line.of(row),
        row.template,
        row.templateVersion,
        row.causes.stream().sorted().toList(),
        NoticeTryRow.of(row.notice).stream().map(Try::of).toList(),
        text.map(t -> t.subject).orElse(null),
        text.map(t -> withoutLinks(t.plain)).orElse(null),
        text.map(t -> t.calendar).isPresent());
  }

  /** Whoever opens a reader's own link acts for the reader. */
  private static String withoutLinks(String text) {
    return text.replaceAll(TOKEN, "/notify/$1/...");
  }
}
