package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import org.tapeline.inventory.helmet.HelmetViews.View;
import org.tapeline.inventory.place.Places;
import org.tapeline.inventory.policy.HelmetPolicy;
import org.tapeline.inventory.policy.HelmetPolicyFile;

/** Puts together what a helmet's page shows. */
@ApplicationScoped
public class HelmetSheets {
  private final HelmetDesk desk;
  private final HelmetFits fits;
  private final HelmetPolicyFile policy;
  private final Places places;
  private final Clock clock;

  HelmetSheets(
      HelmetDesk desk, HelmetFits fits, HelmetPolicyFile policy, Places places, Clock clock) {
    this.desk = desk;
    this.fits = fits;
    this.policy = policy;
    this.places = places;
    this.clock = clock;
  }

  HelmetSheet of(View view) {
    ZoneId zone = places.zone(view.place());
    List<HelmetEvent> life =
        desk.life(view.tag()).stream().map(e -> (HelmetEvent) e.data()).toList();
    HelmetPolicy rules = policy.get();
    return new HelmetSheet(
        view,
        Lifecycle.stepsFrom(Helmet.of(view.tag(), life).state()),
        TimeLine.of(life, fits.of(view.tag()), zone),
        rules.says(view.model()),
        view.manufacturedOn().map(made -> rules.lastDay(view.model(), made)),
        LocalDate.now(clock.withZone(zone)),
        places.all());
  }
}
