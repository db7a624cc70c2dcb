package org.tapeline.inventory.damage;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.inject.Named;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;

/** The table of photos. */
@Named("damagePhotos")
@ApplicationScoped
public class PhotoStore {
  private static final DateTimeFormatter DAY =
      DateTimeFormatter.ofPattern("MMM d, uuuu", Locale.US);

  private final Database database;

  PhotoStore(Database database) {
    this.database = database;
  }

  /**
   * What is known of a photo without looking at it.
   *
   * @param deletedBy staff id of who deleted it; empty while it is there
   */
  public record Known(UUID report, String tag, Instant storedAt, String deletedBy) {
    public boolean isThere() {
      return deletedBy.isEmpty();
    }

    /** The day on which it was sent, by UTC. */
    public String day() {
      return DAY.format(storedAt.atZone(ZoneOffset.UTC));
    }
  }

  private static final String KNOWN =
      "select report, tag, stored_at, coalesce(deleted_by, '') as deleted_by from damage_photo";

  Optional<Known> find(UUID report) {
    return known(" where report = ?", report).stream().findFirst();
  }

  public List<Known> of(String tag) {
    return known(" where tag = ? order by stored_at", tag);
  }

  private List<Known> known(String where, Object value) {
    return database.list(
        KNOWN + where,
        row ->
            new Known(
                row.getObject("report", UUID.class),
                row.getString("tag"),
                Database.instant(row, "stored_at"),
                row.getString("deleted_by")),
        value);
  }

  Optional<byte[]> jpeg(UUID report) {
    return database.first(
        "select jpeg from damage_photo where report = ? and jpeg is not null",
        row -> row.getBytes(1),
        report);
  }

  /** Whether it was kept: one that is there already is not replaced. */
  boolean keep(UUID report, String tag, Photo photo, String by, Instant now) {
    return database.change(
            "insert into damage_photo (report, tag, jpeg, width, height, stored_at, stored_by)"
                + " values (?, ?, ?, ?, ?, ?, ?) on conflict (report) do update"
                + " set jpeg = excluded.jpeg, width = excluded.width, height = excluded.height,"
                + " stored_at = excluded.stored_at, stored_by = excluded.stored_by,"
                + " deleted_at = null, deleted_by = null where damage_photo.jpeg is null",
            report,
            tag,
            photo.jpeg(),
            photo.width(),
            photo.height(),
            now,
            by)
        > 0;
  }

  /** Whether there was one. */
  boolean delete(UUID report, String by, Instant now) {
    return database.change(
            "update damage_photo set jpeg = null, deleted_at = ?, deleted_by = ?"
                + " where report = ? and jpeg is not null",
            now,
            by,
            report)
        > 0;
  }
}
