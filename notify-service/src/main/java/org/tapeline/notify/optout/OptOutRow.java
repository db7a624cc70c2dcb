package org.tapeline.notify.optout;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.UUID;

/** Who turned off what is not about safety; follows from the event. */
@Entity
@Table(name = "opt_out")
public class OptOutRow extends PanacheEntityBase {
  @Id public String recipient;
  public long version;
  public UUID notice;
  public Instant at;

  /** False when it was turned on again. */
  public boolean off = true;

  static void show(OptedOut event) {
    OptOutRow row = findById(event.recipient().toString());
    if (row == null) {
      row = new OptOutRow();
      row.recipient = event.recipient().toString();
    }
    row.version++;
    row.notice = event.notice();
    row.at = event.at();
    row.off = true;
    row.persist();
  }

  static void show(OptedIn event) {
    OptOutRow row = findById(event.recipient().toString());
    row.version++;
    row.at = event.at();
    row.off = false;
    row.persist();
  }
}
