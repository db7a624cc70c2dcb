package org.tapeline.notify.page;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.token.SlotLinks;
import org.tapeline.notify.cause.OpenRefits;
import org.tapeline.notify.cause.RefitCase;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.link.NoticeLinks;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Phrases;

/**
 * The way from a notice's page to the free slots of its case, as long as that is open; of a notice
 * about several children, to those of each child.
 */
@ApplicationScoped
class SlotChoices {
  private final OpenRefits refits;
  private final Contacts contacts;
  private final NoticeLinks links;

  SlotChoices(OpenRefits refits, Contacts contacts, NoticeLinks links) {
    this.refits = refits;
    this.contacts = contacts;
    this.links = links;
  }

  /**
   * @param label says for which child
   * @param path behind the gateway; ends with the slot
   */
  record Choice(String label, String path) {}

  /** In the caller's transaction. */
  List<Choice> of(NoticeRow notice, Phrases phrases) {
    List<RefitCase> open =
        notice.refitCase == null
            ? refits.of(notice.players)
            : refits.of(notice.refitCase).stream().toList();
    return open.stream().map(refit -> choice(notice.notice, refit, phrases)).toList();
  }

  private Choice choice(UUID notice, RefitCase refit, Phrases phrases) {
    Facts player =
        Facts.none()
            .with(
                "player",
                contacts.firstName(refit.player()).orElse(phrases.within("player.unknown")));
    SlotLinks.Slot slot = new SlotLinks.Slot(refit.id(), notice, phrases.language().code());
    return new Choice(
        phrases.of("page.choose", player),
        links.slotPath(slot, refit.booking().map(RefitCase.Booking::endsAt)));
  }
}
