package org.tapeline.notify.trace;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import javax.sql.DataSource;
import org.tapeline.notify.trace.NoticeFilter.Condition;

/** How many notices there were by day, and how long they took. */
@ApplicationScoped
class NoticeFigures {
  private static final int MOST_DAYS = 31;

  private final DataSource database;

  NoticeFigures(DataSource database) {
    this.database = database;
  }

  /**
   * The notices that were raised on one day.
   *
   * @param day ISO date in the zone asked for
   * @param counts by state, and by channel under {@code channel mail}
   */
  public record Day(String day, Map<String, Integer> counts) {
    public int of(String word) {
      return counts.getOrDefault(word, 0);
    }

    public int by(String channel) {
      return of("channel " + channel);
    }
  }

  /**
   * From when the first cause happened until a channel took the notice.
   *
   * @param count of how many
   * @param half in this time half of them were out
   * @param nearlyAll in this time 99 of 100 were out
   */
  public record Delays(int count, Duration half, Duration nearlyAll) {
    public String inSeconds(Duration delay) {
      return "%.1f s".formatted(delay.toMillis() / 1000.0);
    }
  }

  /** The newest days that have any, newest first. */
  List<Day> days(NoticeFilter filter, ZoneId zone) {
    Condition condition = filter.condition();
    Map<String, Day> days = new LinkedHashMap<>();
    record Count(String day, String state, String channel, int count) {}
    List<Count> counts =
        Rows.of(
            database,
            """
            select to_char(n.raised_at at time zone ?, 'YYYY-MM-DD') as day, n.state,
              coalesce(n.channel, 'none') as channel, count(*)::int as count
            from notice n where %s group by 1, 2, 3 order by 1 desc
            """
                .formatted(condition.sql()),
            Stream.concat(Stream.of(zone.getId()), condition.values().stream()).toList(),
            row ->
                new Count(
                    row.text("day"), row.text("state"), row.text("channel"), row.number("count")));
    for (Count count : counts) {
      Map<String, Integer> of =
          days.computeIfAbsent(count.day(), d -> new Day(d, new LinkedHashMap<>())).counts();
      of.merge(count.state(), count.count(), Integer::sum);
      of.merge("channel " + count.channel(), count.count(), Integer::sum);
    }
    return days.values().stream().limit(MOST_DAYS).toList();
  }

  /** Empty when none was sent whose cause is known. */
  Optional<Delays> delays(NoticeFilter filter) {
    Condition condition = filter.condition();
    return Rows.of(
            database,
            """
            select count(*)::int as count,
              coalesce(percentile_cont(0.5) within group (order by millis), 0)::bigint as half,
              coalesce(percentile_cont(0.99) within group (order by millis), 0)::bigint as nearly_all
            from (
              select extract(epoch from min(j.recorded_at) - min(h.happened_at)) * 1000 as millis
              from notice n
              join notice_cause c on c.notice = n.notice
              join heard_event h on h.event = c.event
              join journal j
                on j.stream = 'notice-' || n.notice::text and j.type like '%%.notice-sent.v%%'
              where %s
              group by n.notice) as took
            """
                .formatted(condition.sql()),
            condition.values(),
            row ->
                new Delays(
                    row.number("count"),
                    Duration.ofMillis(row.large("half")),
                    Duration.ofMillis(row.large("nearly_all"))))
        .stream()
        .filter(delays -> delays.count() > 0)
        .findFirst();
  }
}
