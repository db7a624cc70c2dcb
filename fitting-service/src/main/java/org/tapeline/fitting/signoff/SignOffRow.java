package org.tapeline.fitting.signoff;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** The newest word on a player's sign-off. */
@Entity
@Table(name = "sign_off")
public class SignOffRow extends PanacheEntityBase {
  @Id public UUID player;
  public String state;
  public UUID session;
  public String tag;
  public String model;
  public String size;
  public String why;
  public Instant at;

  void signedOff(SignOffEvent.SignedOff e) {
    state = "signed-off";
    session = e.session();
    tag = e.tag();
    model = e.model();
    size = e.size();
    why = null;
    at = e.at();
  }

  void ended(String newState, String because, Instant when) {
    state = newState;
    why = because;
    at = when;
  }

  /** Who is signed off in that helmet. */
  public static List<SignOffRow> liveOn(String tag) {
    return list("tag = ?1 and state = 'signed-off'", tag);
  }
}
