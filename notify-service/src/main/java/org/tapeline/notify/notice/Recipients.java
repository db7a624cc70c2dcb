package org.tapeline.notify.notice;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.notify.contact.Contacts;

/** Who recipients are, for the equipment manager's pages. */
@ApplicationScoped
public class Recipients {
  private static final String GUARDIAN = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private final Contacts contacts;

  Recipients(Contacts contacts) {
    this.contacts = contacts;
  }

  /**
   * By recipient: a guardian's name, "erased" for one who is not known any more, or the staff id.
   */
  @Transactional
  public Map<String, String> names(Collection<String> recipients) {
    List<UUID> guardians =
        recipients.stream()
            .distinct()
            .filter(r -> r.matches(GUARDIAN))
            .map(UUID::fromString)
            .toList();
    Map<UUID, String> known = contacts.namesOf(guardians);
    Map<String, String> names = new HashMap<>();
    for (String recipient : recipients) {
      names.put(
          recipient,
          recipient.matches(GUARDIAN)
              ? known.getOrDefault(UUID.fromString(recipient), "erased")
              : recipient);
    }
    return names;
  }
}
