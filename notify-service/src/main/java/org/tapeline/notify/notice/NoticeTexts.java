package org.tapeline.notify.notice;

import com.fasterxml.jackson.core.JsonProcessingException;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.EventJson;
import org.tapeline.notify.link.NoticeLinks;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.LetterLayout;

/** Keeps the words of notices, and erases them; always in the caller's transaction. */
@ApplicationScoped
public class NoticeTexts {
  private final LetterLayout layout;
  private final NoticeLinks links;

  NoticeTexts(LetterLayout layout, NoticeLinks links) {
    this.layout = layout;
    this.links = links;
  }

  void keep(NewNotice notice) {
    Letter letter = notice.letter();
    String turnOff =
        links.turnOff(notice.kind().mayBeTurnedOff(), notice.recipient(), notice.id()).orElse("");
    String contact = links.contact(notice.recipient(), notice.id()).orElse("");
    NoticeTextRow row = new NoticeTextRow();
    row.notice = notice.id();
    row.subject = letter.subject();
    row.letter = write(letter);
    row.plain = layout.plain(letter, turnOff, contact);
    row.html = layout.html(letter, turnOff, contact);
    row.calendar = notice.calendar().orElse(null);
    row.persist();
  }

  /** The rendered text; empty once it was erased. */
  public Optional<NoticeTextRow> of(UUID notice) {
    return NoticeTextRow.findByIdOptional(notice);
  }

  /** The words of a notice; empty once they were erased. */
  public Optional<Letter> letterOf(UUID notice) {
    return of(notice).map(row -> read(row.letter));
  }

  /** Erases every text to a person. */
  public void eraseRecipient(String recipient) {
    NoticeTextRow.delete(
        "notice in (select n.notice from NoticeRow n where n.recipient = ?1)", recipient);
  }

  /** Erases every text about a player, to whomever it went. */
  public void erasePlayer(UUID player) {
    NoticeTextRow.delete(
        "notice in (select n.notice from NoticeRow n where ?1 member of n.players)", player);
  }

  private static String write(Letter letter) {
    try {
      return EventJson.MAPPER.writeValueAsString(letter);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A letter is plain text fields only", e);
    }
  }

  private static Letter read(String json) {
    try {
      return EventJson.MAPPER.readValue(json, Letter.class);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException("A stored letter cannot be read", e);
    }
  }
}
