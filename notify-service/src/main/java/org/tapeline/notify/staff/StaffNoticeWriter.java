package org.tapeline.notify.staff;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.notify.link.NoticeLinks;
import org.tapeline.notify.notice.NewNotice;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Words;

/** Writes a notice to staff, with a link to the page where the work is done. */
@ApplicationScoped
public class StaffNoticeWriter {

  /**
   * @param about what makes it unique, with kind and recipient
   * @param recipient a staff id
   * @param label the phrase on the link
   * @param path the page it leads to
   * @param players whom it names, so that erasing one erases the words
   * @param sections lists
   */
  public record Draft(
      NoticeKind kind,
      UUID about,
      String recipient,
      Urgency urgency,
      Facts facts,
      String label,
      String path,
      List<UUID> players,
      Optional<UUID> refitCase,
      List<Letter.Section> sections) {

    public Draft {
      players = List.copyOf(players);
      sections = List.copyOf(sections);
    }
  }

  private final Notices notices;
  private final Words words;
  private final Staff staff;
  private final NoticeLinks links;

  StaffNoticeWriter(Notices notices, Words words, Staff staff, NoticeLinks links) {
    this.notices = notices;
    this.words = words;
    this.staff = staff;
    this.links = links;
  }

  void raise(Draft draft, ReceivedEvent event) {
    raise(draft, List.of(event.id()), Cause.of(event, "notice"));
  }

  /**
   * @param causes ids of what led to it, at least one
   */
  public void raise(Draft draft, List<UUID> causes, Cause cause) {
    if (notices.raisedBefore(draft.kind(), draft.about(), draft.recipient())) {
      return;
    }
    Language language = staff.languageOf(draft.recipient());
    String template = draft.kind().code();
    Letter.Link link =
        new Letter.Link(
            words.phrases(language).of(draft.label()), links.addressOf(draft.path()), false);
    notices.raise(
        new NewNotice(
            Notices.idOf(draft.kind(), draft.about(), draft.recipient()),
            draft.kind(),
            draft.about(),
            draft.recipient(),
            draft.urgency(),
            draft.players(),
            causes,
            draft.refitCase(),
            Optional.empty(),
            Optional.empty(),
            template,
            words.template(language, template).version(),
            words.write(language, template, draft.facts(), link).with(draft.sections()),
            Optional.empty()),
        cause);
  }
}
