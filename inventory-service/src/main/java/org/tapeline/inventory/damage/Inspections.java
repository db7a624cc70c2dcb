package org.tapeline.inventory.damage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import org.tapeline.inventory.compat.CompatibilityTable;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetDesk;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.http.Problem.FieldError;

/** Helmets that wait for an inspection, and the form for one. */
@Named("inspections")
@ApplicationScoped
public class Inspections {
  private static final int MOST = 300;

  /** Why and since when is what the helmet's own events say last. */
  private static final String WAITING =
      """
      select h.tag, h.model, h.size, h.place, h.on_hold, q.since, coalesce(q.why, '') as why,
             coalesce(d.place, '') as at_part, coalesce(d.kind, '') as kind,
             exists (select 1 from damage_photo p where p.tag = h.tag and p.jpeg is not null)
               as photo
        from helmet h
        left join lateral (
          select recorded_at as since, data ->> 'why' as why from journal
           where stream = 'helmet-' || h.tag
             and type = 'org.tapeline.inventory.helmet-quarantined.v1'
           order by version desc limit 1) q on true
        left join lateral (
          select data ->> 'where' as place, data ->> 'what' as kind from journal
           where stream = 'helmet-' || h.tag
             and type = 'org.tapeline.inventory.damage-reported.v1'
             and data ->> 'severity' = 'structural'
           order by version desc limit 1) d on q.why = 'damage'
       where h.state = 'quarantined' and (? = '' or h.place = ?)
       order by q.since, h.tag limit
      """;

  private final Database database;
  private final HelmetDesk helmets;
  private final InspectionDesk desk;
  private final DamageDesk damage;
  private final CompatibilityTable compatibility;
  private final Clock clock;

  Inspections(
      Database database,
      HelmetDesk helmets,
      InspectionDesk desk,
      DamageDesk damage,
      CompatibilityTable compatibility,
      Clock clock) {
    this.database = database;
    this.helmets = helmets;
    this.desk = desk;
    this.damage = damage;
    this.compatibility = compatibility;
    this.clock = clock;
  }

  /**
   * A helmet that waits.
   *
   * @param days how long, whole days
   * @param why in words
   */
  public record Waiting(
      String tag,
      String model,
      String size,
      String place,
      boolean onHold,
      long days,
      String why,
      boolean photo) {
    public String daysSaid() {
      return days == 0 ? "today" : days == 1 ? "1 day" : days + " days";
    }
  }

  /**
   * Who waits longest first.
   *
   * @param place empty for all
   */
  public List<Waiting> waiting(String place) {
    Instant now = clock.instant();
    return database.list(WAITING + MOST, row -> read(row, now), place, place);
  }

  private Waiting read(ResultSet row, Instant now) throws SQLException {
    Instant since = row.getObject("since") == null ? now : Database.instant(row, "since");
    DamageRules rules = damage.rules();
    String why =
        row.getString("kind").isEmpty()
            ? "Set aside to be looked at"
            : rules.saidWhere(row.getString("at_part"))
                + ": "
                + rules.saidWhat(row.getString("kind")).toLowerCase(Locale.ROOT);
    return new Waiting(
        row.getString("tag"),
        row.getString("model"),
        row.getString("size"),
        row.getString("place"),
        row.getBoolean("on_hold"),
        Math.max(0, Duration.between(since, now).toDays()),
        why,
        row.getBoolean("photo"));
  }

  public InspectionForm blank(String tag) {
    return form(tag, new Inspection("", List.of(), List.of()), List.of());
  }

  InspectionForm form(String tag, Inspection said, List<FieldError> errors) {
    String model = helmets.load(tag).helmet().model();
    return new InspectionForm(
        tag,
        desk.policy().findings(),
        compatibility.inForce().itemsFor(model),
        said,
        UuidV7.next(),
        errors);
  }
}
