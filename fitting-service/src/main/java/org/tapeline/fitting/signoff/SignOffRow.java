package org.tapeline.fitting.signoff;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.signoff.SignOffEvent.Conditions;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffLapsed;
import org.tapeline.fitting.signoff.SignOffEvent.SignOffWithdrawn;
import org.tapeline.fitting.signoff.SignOffEvent.SignedOff;

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
  public String fitter;

  /** Air at the fit, degrees Celsius; null when it was not recorded. */
  @Column(name = "fit_air_celsius")
  public Double fitAirCelsius;

  @Column(name = "fit_altitude_m")
  public Double fitAltitudeM;

  @Column(name = "fit_hair")
  public String fitHair;

  public String why;
  public Instant at;

  static void show(SignOffEvent event) {
    SignOffRow row = findById(event.player());
    if (row == null) {
      row = new SignOffRow();
      row.player = event.player();
    }
    switch (event) {
      case SignedOff e -> row.signedOff(e);
      case SignOffWithdrawn e -> row.ended(SignOff.WITHDRAWN, e.why(), e.at());
      case SignOffLapsed e -> row.ended(SignOff.LAPSED, e.why(), e.at());
    }
    row.persistAndFlush();
  }

  private void signedOff(SignedOff e) {
    state = SignOff.SIGNED_OFF;
    session = e.session();
    tag = e.tag();
    model = e.model();
    size = e.size();
    fitter = e.fitter();
    why = null;
    at = e.at();
    fittedUnder(e.conditions());
  }

  public boolean holds() {
    return state.equals(SignOff.SIGNED_OFF);
  }

  void fittedUnder(Conditions conditions) {
    fitAirCelsius = conditions.airCelsius().orElse(null);
    fitAltitudeM = conditions.altitudeM().orElse(null);
    fitHair = conditions.hair().orElse(null);
  }

  private void ended(String newState, String because, Instant when) {
    state = newState;
    why = because;
    at = when;
  }

  /** Who is signed off in that helmet. */
  public static List<SignOffRow> liveOn(String tag) {
    return list("tag = ?1 and state = 'signed-off'", tag);
  }

  /** The sign-offs that hold, of these players. */
  public static List<SignOffRow> liveOf(Collection<UUID> players) {
    return players.isEmpty() ? List.of() : list("player in ?1 and state = 'signed-off'", players);
  }

  public static List<SignOffRow> allLive() {
    return list("state = 'signed-off' order by player");
  }

  static List<SignOffRow> of(Collection<UUID> players) {
    return players.isEmpty() ? List.of() : list("player in ?1", players);
  }
}
