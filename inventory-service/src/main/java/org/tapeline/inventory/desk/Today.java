package org.tapeline.inventory.desk;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.stock.CountsToDo;

/** What needs doing today at the depot and at the desk, each with how much of it there is. */
@ApplicationScoped
public class Today {
  /** Within these the label of a helmet ends soon: common practice, no source. */
  static final int SOON_DAYS = 30;

  private static final String REQUESTS =
      """
      select count(*) filter (where r.state = 'requested') as to_pick,
             count(*) filter (where r.state = 'picked') as to_ship,
             count(*) filter (where r.state = 'shipped') as to_receive,
             count(*) filter (where r.expected_at < now()) as late
        from restock r where r.state not in ('received', 'cancelled')
      """;
  private static final String HELMETS =
      """
      select count(*) filter (where state = 'quarantined') as to_inspect,
             count(*) filter (where state = 'held') as held,
             count(*) filter (where state = 'at-reconditioner') as away,
             count(*) filter (where state = 'ordered' and expected_on < ?) as late,
             count(*) filter (where certified_until between ? and ?
               and state in ('available', 'issued')) as ending,
             count(*) filter (where certified_until < ?
               and state in ('available', 'issued')) as ended
        from helmet where state <> 'retired'
      """;
  private static final String WAITING =
      """
      select count(*) filter (where c.urgency = 'do-not-wear') as urgent, count(*) as everyone
        from refit_case c join case_need n on n.refit_case = c.refit_case
       where c.open and n.status = 'waiting'
      """;

  private final Database database;
  private final ShortList missing;
  private final CountsToDo counts;

  Today(Database database, ShortList missing, CountsToDo counts) {
    this.counts = counts;
    this.database = database;
    this.missing = missing;
  }

  /**
   * Something to do.
   *
   * @param urgent it cannot wait for tomorrow
   */
  public record Task(long number, String what, String href, boolean urgent) {}

  /** A heading with what is to be done under it; what there is none of is left out. */
  public record Part(String title, List<Task> tasks) {
    public boolean isDone() {
      return tasks.isEmpty();
    }
  }

  public List<Part> parts(LocalDate today) {
    return List.of(players(today), depot(), helmets(today));
  }

  private Part players(LocalDate today) {
    List<Task> tasks = new ArrayList<>();
    database.list(
        WAITING,
        row -> {
          long urgent = row.getLong("urgent");
          long rest = row.getLong("everyone") - urgent;
          add(tasks, urgent, "wait and must not wear a helmet", "/inventory/waiting", true);
          add(tasks, rest, "wait for a helmet or a part", "/inventory/waiting", false);
          return 0;
        });
    long few = missing.lines(today).stream().filter(ShortLine::isShort).count();
    add(tasks, few, "sizes and parts are or will be short", "/inventory/short", false);
    return new Part("Players", tasks);
  }

  private Part depot() {
    List<Task> tasks = new ArrayList<>();
    database.list(
        REQUESTS,
        row -> {
          String requests = "/inventory/restock";
          add(tasks, row.getLong("to_pick"), "requests to pick", requests, false);
          add(tasks, row.getLong("to_ship"), "requests to send", requests, false);
          add(tasks, row.getLong("to_receive"), "requests to receive", requests, false);
          add(tasks, row.getLong("late"), "requests are late", requests, true);
          return 0;
        });
    List<CountsToDo.ToDo> shelves = counts.at("");
    long below = shelves.stream().filter(CountsToDo.ToDo::below).count();
    add(tasks, below, "counts since the books hold less than nothing", "/inventory/stock", true);
    add(tasks, shelves.size() - below, "counts not done this season", "/inventory/stock", false);
    return new Part("Requests and shelves", tasks);
  }

  private Part helmets(LocalDate today) {
    List<Task> tasks = new ArrayList<>();
    String list = "/inventory/helmets?";
    database.list(
        HELMETS,
        row -> {
          add(tasks, row.getLong("to_inspect"), "to inspect", "/inventory/inspections", false);
          add(tasks, row.getLong("ended"), "out of certification", list + "certified=ended", true);
          add(
              tasks,
              row.getLong("ending"),
              "certified for less than " + SOON_DAYS + " days more",
              list + "certified=soon",
              false);
          add(tasks, row.getLong("held"), "on hold", list + "state=held", false);
          add(
              tasks,
              row.getLong("away"),
              "at the reconditioner",
              "/inventory/reconditioning",
              false);
          add(tasks, row.getLong("late"), "ordered and late", list + "state=ordered", true);
          return 0;
        },
        today,
        today,
        today.plusDays(SOON_DAYS),
        today);
    return new Part("Helmets", tasks);
  }

  private static void add(List<Task> tasks, long number, String what, String href, boolean urgent) {
    if (number > 0) {
      tasks.add(new Task(number, what, href, urgent));
    }
  }
}
