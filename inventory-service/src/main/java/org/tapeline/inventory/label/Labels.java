package org.tapeline.inventory.label;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.TagReading;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Finds what labels are to be printed for. */
@ApplicationScoped
public class Labels {
  /** More than that are printed in parts: common practice, no source. */
  static final int MOST = 1500;

  private static final String FILTERED =
      """
      select tag, model, size from helmet
       where state <> 'retired' and (? = '' or place = ?) and (? = '' or model = ?)
         and (? = '' or size = ?) and (? = '' or state = ?) and (? = '' or lot = ?)
       order by place, model, size, tag limit\s\
      """
          + (MOST + 1);
  private static final String RUN =
      """
      select tag, model, size from reserved_tag where delivery = ?
      union all
      select h.tag, h.model, h.size from received_helmet r join helmet h on h.tag = r.tag
       where r.receiving = ? and r.how = 'untagged'
       order by 1
      """;

  private final Database database;
  private final TagReading reading;

  Labels(Database database, TagReading reading) {
    this.database = database;
    this.reading = reading;
  }

  /**
   * @throws Problem 400 for a tag that is none, or that nobody here knows, or for too many
   */
  List<Label> of(Wanted wanted) {
    Set<Label> labels = new LinkedHashSet<>();
    if (wanted.isFiltered()) {
      labels.addAll(filtered(wanted));
    }
    wanted.run().ifPresent(run -> labels.addAll(run(run)));
    labels.addAll(typed(wanted.tags()));
    if (labels.size() > MOST) {
      throw Problem.badRequest(
          "too-many", "These are more than " + MOST + " labels. Choose fewer, and print in parts.");
    }
    return List.copyOf(labels);
  }

  private List<Label> filtered(Wanted w) {
    return database.list(
        FILTERED,
        Labels::read,
        w.place(),
        w.place(),
        w.model(),
        w.model(),
        w.size(),
        w.size(),
        w.state(),
        w.state(),
        w.lot(),
        w.lot());
  }

  private List<Label> run(UUID run) {
    return database.list(RUN, Labels::read, run, run);
  }

  private List<Label> typed(List<String> tags) {
    List<Label> found = new ArrayList<>();
    List<String> wrong = new ArrayList<>();
    for (String typed : tags) {
      Optional<Label> label = reading.tag(typed).flatMap(this::known);
      label.ifPresentOrElse(found::add, () -> wrong.add(typed));
    }
    if (!wrong.isEmpty()) {
      String sentence = "No such helmet: " + String.join(", ", wrong) + ". Read these tags again.";
      throw Problem.badRequest("tags", sentence, new FieldError("tags", sentence));
    }
    return found;
  }

  private Optional<Label> known(String tag) {
    return database.first(
        "select tag, model, size from helmet where tag = ? union all"
            + " select tag, model, size from reserved_tag where tag = ? limit 1",
        Labels::read,
        tag,
        tag);
  }

  private static Label read(ResultSet row) throws SQLException {
    return new Label(row.getString(1), row.getString(2), row.getString(3));
  }
}
