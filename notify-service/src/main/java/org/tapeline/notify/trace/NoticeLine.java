package org.tapeline.notify.trace;

import java.sql.SQLException;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import java.util.UUID;

/**
 * One notice in lists and files; nothing of a person but ids.
 *
 * @param why why it was given up or cancelled; {@code null} otherwise
 * @param channel {@code null} when none reaches the person
 * @param causedAt when the first of its causes happened; {@code null} where that is not known
 * @param sentAt when a channel first took it; {@code null} until then
 */
public record NoticeLine(
    UUID notice,
    String kind,
    String urgency,
    String state,
    String why,
    String channel,
    String recipient,
    String language,
    String template,
    int templateVersion,
    int attempts,
    Instant causedAt,
    Instant raisedAt,
    Instant sentAt,
    Instant changedAt,
    UUID refitCase,
    UUID correlationId) {

  static final List<String> HEADER =
      List.of(
          "notice",
          "kind",
          "urgency",
          "state",
          "why",
          "channel",
          "recipient",
          "language",
          "words",
          "version",
          "tries",
          "caused at",
          "raised at",
          "sent at",
          "changed at",
          "re-fit case",
          "chain");

  static final String SELECT =
      """
      select n.notice, n.kind, n.urgency, n.state, n.why, n.channel, n.recipient, n.language,
        n.template, n.template_version, n.attempts, n.raised_at, n.changed_at, n.refit_case,
        n.correlation_id, caused.caused_at, sent.sent_at
      from notice n
      cross join lateral (
        select min(h.happened_at) as caused_at
        from notice_cause c join heard_event h using (event)
        where c.notice = n.notice) as caused
      cross join lateral (
        select min(j.recorded_at) as sent_at from journal j
        where j.stream = 'notice-' || n.notice::text and j.type like '%.notice-sent.v%') as sent
      where\s\
      """;

  static NoticeLine read(Rows.Row row) throws SQLException {
    return new NoticeLine(
        row.id("notice"),
        row.text("kind"),
        row.text("urgency"),
        row.text("state"),
        row.text("why"),
        row.text("channel"),
        row.text("recipient"),
        row.text("language"),
        row.text("template"),
        row.number("template_version"),
        row.number("attempts"),
        row.time("caused_at"),
        row.time("raised_at"),
        row.time("sent_at"),
        row.time("changed_at"),
        row.id("refit_case"),
        row.id("correlation_id"));
  }

  List<Object> cells() {
    return Arrays.asList(
        notice,
        kind,
        urgency,
        state,
        why,
        channel,
        recipient,
        language,
        template,
        templateVersion,
        attempts,
        causedAt,
        raisedAt,
        sentAt,
        changedAt,
        refitCase,
        correlationId);
  }
}
