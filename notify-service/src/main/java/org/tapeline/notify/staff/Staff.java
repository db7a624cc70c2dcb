package org.tapeline.notify.staff;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.tapeline.notify.phone.Telephone;
import org.tapeline.notify.words.Language;

/**
 * Staff recipients and how they are reached. The ids name a function and a place: {@code depot},
 * {@code depot.MAIN}, {@code fitters.NORTH}, {@code manager}. A setting that names no recipient, or
 * that is no telephone number or language, refuses to start.
 */
@ApplicationScoped
public class Staff {
  /** The equipment manager. */
  public static final String MANAGER = "manager";

  private static final String DEPOT = "depot";
  private static final String DEPOTS = "depot.";
  private static final String FITTERS = "fitters.";

  private final StaffAddresses addresses;

  Staff(StaffAddresses addresses) {
    this.addresses = addresses;
    addresses.phones().forEach(this::refuseOtherThanPhones);
    addresses.languages().forEach(this::refuseOtherThanLanguages);
  }

  /** Who serves a depot: its own people where they have an address, else the common one. */
  public String depot(String place) {
    return addresses.depots().containsKey(place) ? DEPOTS + place : DEPOT;
  }

  /** The fitters of a field; empty when none are to be told. */
  public Optional<String> fitters(String field) {
    return addresses.fitters().containsKey(field) ? Optional.of(FITTERS + field) : Optional.empty();
  }

  /** Every depot that is told something. */
  public List<String> depots() {
    TreeSet<String> ids = new TreeSet<>(List.of(DEPOT));
    addresses.depots().keySet().forEach(place -> ids.add(DEPOTS + place));
    return List.copyOf(ids);
  }

  /** The codes of the fields whose fitters are told something. */
  public List<String> fields() {
    return addresses.fitters().keySet().stream().sorted().toList();
  }

  /** The depot or field of a recipient; empty for the common depot and the equipment manager. */
  public Optional<String> placeOf(String recipient) {
    return recipient.startsWith(DEPOTS) || recipient.startsWith(FITTERS)
        ? Optional.of(recipient.substring(recipient.indexOf('.') + 1))
        : Optional.empty();
  }

  /** The address of a recipient's id; empty for an unknown one. */
  public Optional<String> addressOf(String recipient) {
    if (recipient.equals(DEPOT)) {
      return Optional.of(addresses.depot());
    }
    if (recipient.equals(MANAGER)) {
      return Optional.of(addresses.manager());
    }
    return placeOf(recipient)
        .map(
            place ->
                (recipient.startsWith(DEPOTS) ? addresses.depots() : addresses.fitters())
                    .get(place));
  }

  /** The telephone number, E.164; empty where none is set. */
  public Optional<String> phoneOf(String recipient) {
    return Optional.ofNullable(addresses.phones().get(recipient));
  }

  public Language languageOf(String recipient) {
    return Language.of(addresses.languages().getOrDefault(recipient, addresses.language()))
        .orElse(Language.ENGLISH);
  }

  /** The time zone of recipients that belong to no place. */
  public ZoneId zone() {
    return addresses.zone();
  }

  private void refuseOtherThanPhones(String recipient, String phone) {
    if (addressOf(recipient).isEmpty() || !Telephone.isE164(phone)) {
      throw new IllegalStateException(
          "tapeline.staff.phones needs a recipient with an address and a number such as"
              + " +15005550100, not "
              + recipient
              + " = "
              + phone);
    }
  }

  private void refuseOtherThanLanguages(String recipient, String language) {
    if (addressOf(recipient).isEmpty() || Language.of(language).isEmpty()) {
      throw new IllegalStateException(
          "tapeline.staff.languages needs a recipient with an address and a language that words"
              + " exist in, not "
              + recipient
              + " = "
              + language);
    }
  }
}
