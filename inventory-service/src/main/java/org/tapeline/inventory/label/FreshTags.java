package org.tapeline.inventory.label;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.UUID;
import java.util.stream.IntStream;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetTags;
import org.tapeline.journal.Answer;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Reserves tags for helmets that are still to come, so that their labels are ready. */
@ApplicationScoped
public class FreshTags {
  private static final int MOST = 500;
  private static final String CODE = "|[a-z0-9][a-z0-9-]{0,59}";

  private final HelmetTags tags;
  private final Database database;
  private final CommandLog commands;
  private final Caller caller;
  private final Clock clock;

  FreshTags(HelmetTags tags, Database database, CommandLog commands, Caller caller, Clock clock) {
    this.tags = tags;
    this.database = database;
    this.commands = commands;
    this.caller = caller;
    this.clock = clock;
  }

  /**
   * How many, and for what.
   *
   * @param model empty, as is the size, when the delivery is mixed
   */
  public record Ask(int count, String model, String size) {
    public Ask {
      model = model == null ? "" : model.strip();
      size = size == null ? "" : size.strip();
    }
  }

  /** What was reserved; its delivery is the id of the command. */
  public record Reserved(UUID delivery, List<String> tags) {}

  /** Some that were reserved before. */
  public record Before(UUID delivery, Instant at, int count, String model, String size) {
    public LocalDate day() {
      return LocalDate.ofInstant(at, ZoneOffset.UTC);
    }
  }

  Answer reserve(Ask ask, UUID id) {
    if (ask.count() < 1 || ask.count() > MOST) {
      String sentence = "Write a number from 1 to " + MOST + ".";
      throw Problem.badRequest("count", sentence, new FieldError("count", sentence));
    }
    if (!ask.model().matches(CODE) || !ask.size().matches(CODE)) {
      String sentence = "Give the codes of model and size, such as model-a and youth-medium.";
      throw Problem.badRequest("model", sentence, new FieldError("model", sentence));
    }
    return commands.once(
        id, "reserve-tags", ask, () -> Answer.of(200, new Reserved(id, keep(ask, id))));
  }

  private List<String> keep(Ask ask, UUID id) {
    List<String> fresh =
        IntStream.range(0, ask.count()).mapToObj(i -> tags.next().value()).toList();
    database.changeAll(
        "insert into reserved_tag (tag, delivery, position, model, size, reserved_at, reserved_by)"
            + " values (?, ?, ?, ?, ?, ?, ?)",
        IntStream.range(0, fresh.size()).mapToObj(i -> row(ask, id, fresh.get(i), i + 1)).toList());
    return fresh;
  }

  private Object[] row(Ask ask, UUID id, String tag, int position) {
    return new Object[] {tag, id, position, ask.model(), ask.size(), clock.instant(), caller.id()};
  }

  /** The newest first. */
  List<Before> before(int most) {
    return database.list(
        """
        select delivery, max(reserved_at) as at, count(*) as n, max(model) as model,
               max(size) as size
          from reserved_tag group by delivery order by 2 desc limit\s\
        """
            + most,
        row ->
            new Before(
                row.getObject("delivery", UUID.class),
                Database.instant(row, "at"),
                row.getInt("n"),
                row.getString("model"),
                row.getString("size")));
  }
}
