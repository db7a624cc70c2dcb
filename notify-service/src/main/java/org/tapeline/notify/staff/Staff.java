package org.tapeline.notify.staff;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.tapeline.notify.words.Language;

/**
 * Staff recipients and their addresses. The ids name a function and a place: {@code depot}, {@code
 * depot.MAIN}, {@code fitters.NORTH}.
 */
@ApplicationScoped
public class Staff {
  private static final String DEPOT = "depot";
  private static final String DEPOTS = "depot.";
  private static final String FITTERS = "fitters.";

  private final StaffAddresses addresses;

  Staff(StaffAddresses addresses) {
    this.addresses = addresses;
  }

  /** Who serves a depot: its own people where they have an address, else the common one. */
  public String depot(String place) {
    return addresses.depots().containsKey(place) ? DEPOTS + place : DEPOT;
  }

  /** The fitters of a field; empty when none are to be told. */
  public Optional<String> fitters(String field) {
    return addresses.fitters().containsKey(field) ? Optional.of(FITTERS + field) : Optional.empty();
  }

  /** The address of a recipient's id; empty for an unknown one. */
  public Optional<String> addressOf(String recipient) {
    if (recipient.equals(DEPOT)) {
      return Optional.of(addresses.depot());
    }
    if (recipient.startsWith(DEPOTS)) {
      return Optional.ofNullable(addresses.depots().get(recipient.substring(DEPOTS.length())));
    }
    return recipient.startsWith(FITTERS)
        ? Optional.ofNullable(addresses.fitters().get(recipient.substring(FITTERS.length())))
        : Optional.empty();
  }

  public Language language() {
    return Language.of(addresses.language()).orElse(Language.ENGLISH);
  }
}
