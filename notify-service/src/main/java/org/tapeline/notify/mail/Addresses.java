package org.tapeline.notify.mail;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.staff.Staff;

/** The mail address of a recipient as it is now; in the caller's transaction. */
@ApplicationScoped
class Addresses {
  private static final String UUID_FORM = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private final Contacts contacts;
  private final Staff staff;

  Addresses(Contacts contacts, Staff staff) {
    this.contacts = contacts;
    this.staff = staff;
  }

  /** Empty when none is known, or the person was erased. */
  Optional<String> of(String recipient) {
    return recipient.matches(UUID_FORM)
        ? contacts.mailOf(UUID.fromString(recipient))
        : staff.addressOf(recipient);
  }
}
