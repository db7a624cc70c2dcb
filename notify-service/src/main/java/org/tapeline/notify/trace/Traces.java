package org.tapeline.notify.trace;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javax.sql.DataSource;
import org.tapeline.journal.EventJson;

/** Reads what is known of one notice. */
@ApplicationScoped
class Traces {
  private final DataSource database;
  private final NoticeLines lines;

  Traces(DataSource database, NoticeLines lines) {
    this.database = database;
    this.lines = lines;
  }

  Optional<Trace> of(UUID notice) {
    return lines.one(notice).map(this::trace);
  }

  private Trace trace(NoticeLine line) {
    UUID notice = line.notice();
    return new Trace(
        line,
        Rows.of(
            database,
            "select player from notice_player where notice = ? order by player",
            List.of(notice),
            row -> row.id("player")),
        causes(notice),
        events(notice),
        tries(notice),
        messages(notice),
        Rows.of(
            database,
            "select channel, code, at from bounce where recipient = ? order by channel",
            List.of(line.recipient()),
            row -> new Trace.Bounce(row.text("channel"), row.text("code"), row.time("at"))));
  }

  private List<Trace.CauseEvent> causes(UUID notice) {
    return Rows.of(
        database,
        """
        select c.event, h.type, h.service, h.stream, h.happened_at, h.causation_id
        from notice_cause c left join heard_event h using (event)
        where c.notice = ? order by h.happened_at, c.event
        """,
        List.of(notice),
        row ->
            new Trace.CauseEvent(
                row.id("event"),
                row.text("type"),
                row.text("service"),
                row.text("stream"),
                row.time("happened_at"),
                row.id("causation_id")));
  }

  private List<Trace.Recorded> events(UUID notice) {
    return Rows.of(
        database,
        """
        select event_id, version, type, recorded_at, causation_id, data
        from journal where stream = ? order by version
        """,
        List.of("notice-" + notice),
        row ->
            new Trace.Recorded(
                row.id("event_id"),
                row.large("version"),
                row.text("type"),
                row.time("recorded_at"),
                row.id("causation_id"),
                json(row.text("data"))));
  }

  private List<Trace.Try> tries(UUID notice) {
    return Rows.of(
        database,
        "select * from notice_try where notice = ? order by attempt",
        List.of(notice),
        row ->
            new Trace.Try(
                row.number("attempt"),
                row.text("channel"),
                row.time("started_at"),
                row.time("ended_at"),
                row.text("outcome"),
                row.text("code")));
  }

  private List<Trace.TextMessage> messages(UUID notice) {
    return Rows.of(
        database,
        "select * from text_message where notice = ? order by message_group",
        List.of(notice),
        row ->
            new Trace.TextMessage(
                row.number("message_group"), row.text("state"), row.time("changed_at")));
  }

  private static JsonNode json(String text) {
    try {
      return EventJson.MAPPER.readTree(text);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A journal row is not JSON", e);
    }
  }
}
