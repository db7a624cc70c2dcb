package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import org.tapeline.inventory.helmet.HelmetCommand.Issue;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/** A sign-off gives the helmet to the player; one that cannot be given is said so. */
@ApplicationScoped
public class WhenSignedOffThenIssue {
  private final HelmetDesk desk;
  private final Places places;
  private final HelmetFits fits;

  WhenSignedOffThenIssue(HelmetDesk desk, Places places, HelmetFits fits) {
    this.desk = desk;
    this.places = places;
    this.fits = fits;
  }

  public void declareOn(Subscription subscription) {
    SignedOff.declareOn(subscription, this::signedOff);
  }

  private void signedOff(SignedOff d, ReceivedEvent event) {
    LocalDate day = LocalDate.ofInstant(d.at(), places.zone(d.field()));
    Issue issue = new Issue(d.player(), d.field(), d.session(), day, d.at());
    desk.issue(d.tag(), issue, Cause.of(event, "issue"));
    fits.keep(d, event);
  }
}
