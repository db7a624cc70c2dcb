package org.tapeline.notify.trace;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import javax.sql.DataSource;
import org.tapeline.notify.trace.NoticeFilter.Condition;

/** Notices as lines, newest first. */
@ApplicationScoped
class NoticeLines {
  private static final String NEWEST_FIRST = " order by n.raised_at desc, n.notice desc limit ?";
  private static final int AT_ONCE = 500;

  private final DataSource database;

  NoticeLines(DataSource database) {
    this.database = database;
  }

  List<NoticeLine> newest(NoticeFilter filter, int most) {
    return read(filter.condition(), most);
  }

  Optional<NoticeLine> one(UUID notice) {
    return read(new Condition("n.notice = ?", List.of(notice)), 1).stream().findFirst();
  }

  /**
   * All of them, some at a time, so that no file is ever held as a whole. What is raised while one
   * reads is not in it.
   */
  void each(NoticeFilter filter, Consumer<NoticeLine> reader) {
    List<NoticeLine> some = read(filter.condition(), AT_ONCE);
    while (!some.isEmpty()) {
      some.forEach(reader);
      NoticeLine last = some.getLast();
      some =
          some.size() < AT_ONCE
              ? List.of()
              : read(
                  filter
                      .condition()
                      .and(
                          "(n.raised_at, n.notice) < (?, ?)",
                          List.of(last.raisedAt(), last.notice())),
                  AT_ONCE);
    }
  }

  private List<NoticeLine> read(Condition condition, int most) {
    Condition limited = condition.and("true" + NEWEST_FIRST, List.of(most));
    return Rows.of(database, NoticeLine.SELECT + limited.sql(), limited.values(), NoticeLine::read);
  }

  /** The time zone of most places; UTC where no place is known. */
  ZoneId zone() {
    return Rows.of(
            database,
            "select zone from place group by zone order by count(*) desc, zone limit 1",
            List.of(),
            row -> ZoneId.of(row.text("zone")))
        .stream()
        .findFirst()
        .orElse(ZoneOffset.UTC);
  }
}
