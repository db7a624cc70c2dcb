package org.tapeline.notify.cause;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Set;
import java.util.UUID;
import org.tapeline.journal.Subscription;
import org.tapeline.notify.channel.Bounces;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.contact.GuardianDetails;
import org.tapeline.notify.contact.PlayerDetails;
import org.tapeline.notify.retention.Erasure;

/**
 * A case may be heard of before its people are, since they come on another topic: what was missing
 * is told once they are known. A tombstone erases the copies and every text about the person.
 */
@ApplicationScoped
public class WhenPeopleChangeThenLookAgain {
  private final Contacts contacts;
  private final RefitCases cases;
  private final Fits fits;
  private final SecondLook second;
  private final Erasure erasure;
  private final Bounces bounces;

  WhenPeopleChangeThenLookAgain(
      Contacts contacts,
      RefitCases cases,
      Fits fits,
      SecondLook second,
      Erasure erasure,
      Bounces bounces) {
    this.contacts = contacts;
    this.cases = cases;
    this.fits = fits;
    this.second = second;
    this.erasure = erasure;
    this.bounces = bounces;
  }

  public Subscription declareOn(Subscription subscription) {
    return subscription
        .on(
            "org.tapeline.sizing.player-details.v1",
            PlayerDetails.class,
            (details, event) -> {
              contacts.keep(details);
              lookAgain(Set.of(details.player()));
            })
        .on(
            "org.tapeline.sizing.guardian-details.v1",
            GuardianDetails.class,
            (details, event) -> {
              bounces.forget(details.guardian().toString());
              lookAgain(contacts.keep(details));
            })
        .onErased("people", "org.tapeline.sizing.player-details", this::erasePlayer)
        .onErased("people", "org.tapeline.sizing.guardian-details", this::eraseGuardian);
  }

  private void lookAgain(Set<UUID> players) {
    second.willBeAt(players);
    cases.lookAgain(players);
    fits.lookAgain(players);
  }

  private void erasePlayer(String key) {
    erasure.player(UUID.fromString(key));
  }

  private void eraseGuardian(String key) {
    erasure.guardian(UUID.fromString(key));
  }
}
