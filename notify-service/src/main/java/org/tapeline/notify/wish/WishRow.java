package org.tapeline.notify.wish;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;

/** A person's newest wishes. */
@Entity
@Table(name = "wish")
public class WishRow extends PanacheEntityBase {
  @Id public String recipient;
  public long version;
  public String channels;

  @Column(name = "quiet_from")
  public LocalTime quietFrom;

  @Column(name = "quiet_to")
  public LocalTime quietTo;

  public String zone;

  @Column(name = "set_by")
  public String setBy;

  public Instant at;

  static void show(WishesSet event, long version) {
    WishRow row = findById(event.recipient().toString());
    if (row == null) {
      row = new WishRow();
      row.recipient = event.recipient().toString();
    }
    row.version = version;
    row.channels = String.join(" ", event.channels());
    row.quietFrom = event.quietFrom() == null ? null : LocalTime.parse(event.quietFrom());
    row.quietTo = event.quietTo() == null ? null : LocalTime.parse(event.quietTo());
    row.zone = event.zone();
    row.setBy = event.by();
    row.at = event.at();
    row.persist();
  }

  Wish view() {
    return new Wish(
        channels.isEmpty() ? List.of() : List.of(channels.split(" ")),
        Optional.ofNullable(quietFrom).map(from -> new Wish.Quiet(from, quietTo)),
        Optional.ofNullable(zone).map(ZoneId::of));
  }
}
