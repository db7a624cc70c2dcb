package org.tapeline.notify.page;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Answer;
import org.tapeline.journal.Cause;
import org.tapeline.journal.CommandLog;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.notify.notice.Decision;
import org.tapeline.notify.notice.NoticeCommand;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.NoticeTexts;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/** What a parent may see and do with one notice. */
@ApplicationScoped
class ParentView {
  private static final String GUARDIAN = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private final Notices notices;
  private final NoticeTexts texts;
  private final SlotChoices choices;
  private final HelpLines help;
  private final Words words;
  private final CommandLog commands;
  private final Clock clock;

  ParentView(
      Notices notices,
      NoticeTexts texts,
      SlotChoices choices,
      HelpLines help,
      Words words,
      CommandLog commands,
      Clock clock) {
    this.notices = notices;
    this.texts = texts;
    this.choices = choices;
    this.help = help;
    this.words = words;
    this.commands = commands;
    this.clock = clock;
  }

  /**
   * @param newer a later notice to the same person about the same case, if there is one
   * @param stop whether it says that a helmet must not be worn
   * @param confirmed whether the person confirmed to have read it
   * @param calendar whether there is a calendar file that still holds
   * @param choices where another slot can be chosen
   * @param help whom to call
   */
  record Shown(
      UUID notice,
      UUID correlationId,
      Letter letter,
      Optional<Letter> newer,
      boolean stop,
      boolean confirmed,
      boolean calendar,
      List<SlotChoices.Choice> choices,
      HelpLines.Help help) {}

  /** Empty for a notice whose words were erased, and for one that was cancelled. */
  @Transactional
  Optional<Shown> of(UUID id) {
    return NoticeRow.<NoticeRow>findByIdOptional(id)
        .filter(row -> !row.takenBack() && row.recipient.matches(GUARDIAN))
        .flatMap(row -> texts.letterOf(id).map(letter -> shown(row, letter)));
  }

  private Shown shown(NoticeRow row, Letter letter) {
    Optional<Letter> newer = newer(row).flatMap(texts::letterOf);
    return new Shown(
        row.notice,
        row.correlationId,
        letter,
        newer,
        row.urgency.equals(Urgency.DO_NOT_WEAR.code()),
        row.state.equals("acknowledged"),
        newer.isEmpty() && hasDateFile(row),
        choices.of(row, phrasesOf(letter)),
        help.of(row, phrasesOf(letter)));
  }

  /** A file that takes a date out is for the mail program, not for a button. */
  private boolean hasDateFile(NoticeRow row) {
    return texts
        .of(row.notice)
        .map(text -> text.calendar)
        .filter(file -> !file.contains("METHOD:CANCEL"))
        .isPresent();
  }

  Phrases phrasesOf(Letter letter) {
    return words.phrases(Language.of(letter.language()).orElse(Language.ENGLISH));
  }

  /** The newest to the same person about a case that this one tells of too. */
  private static Optional<UUID> newer(NoticeRow row) {
    return NoticeRow.getEntityManager()
        .createQuery(
            """
            select n.notice from NoticeRow n
            where n.recipient = :recipient and n.raisedAt > :raisedAt and n.state <> 'cancelled'
              and exists (select 1 from NoticeCoverRow theirs, NoticeCoverRow ours
                where theirs.notice = n.notice and ours.notice = :notice
                  and theirs.refitCase = ours.refitCase)
            order by n.raisedAt desc
            """,
            UUID.class)
        .setParameter("recipient", row.recipient)
        .setParameter("raisedAt", row.raisedAt)
        .setParameter("notice", row.notice)
        .setMaxResults(1)
        .getResultList()
        .stream()
        .findFirst();
  }

  @Transactional
  Optional<String> calendarOf(UUID id) {
    return texts.of(id).map(text -> text.calendar);
  }

  /**
   * @param sent made by the page; together with the notice it is the command's id, so that nobody
   *     can meet somebody else's command
   */
  void acknowledge(UUID notice, UUID sent) {
    UUID commandId = DerivedId.from(sent, "read/" + notice);
    commands.once(
        commandId,
        "acknowledge-notice",
        Map.of("notice", notice),
        () -> {
          NoticeRow row = NoticeRow.findById(notice);
          Decision decision =
              notices.decide(
                  notice,
                  new NoticeCommand.Acknowledge(clock.instant()),
                  new Cause(commandId, row.correlationId, "read"));
          if (decision instanceof Decision.Refused refused) {
            throw Problem.conflict(refused.code(), refused.sentence());
          }
          return Answer.of(204, Map.of());
        });
  }
}
