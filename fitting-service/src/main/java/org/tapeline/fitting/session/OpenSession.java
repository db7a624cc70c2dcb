package org.tapeline.fitting.session;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** Sessions by player and field, so that one can be found again. */
@Entity
@Table(name = "open_session")
public class OpenSession extends PanacheEntityBase {
  @Id public UUID session;
  public UUID player;
  public String field;
  public String fitter;
  public String status;
  public Instant at;

  static void show(FitSession now, Instant at) {
    OpenSession row = findById(now.session());
    if (row == null) {
      row = new OpenSession();
      row.session = now.session();
      row.player = now.player();
      row.field = now.field();
      row.fitter = now.fitter();
      row.at = at;
    }
    row.status = now.status().name();
    row.persist();
  }

  public static Optional<OpenSession> openOf(UUID player) {
    return find("player = ?1 and status = 'OPEN' order by at desc", player).firstResultOptional();
  }
}
