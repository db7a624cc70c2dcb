package org.tapeline.notify.staff;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.notice.CauseName;
import org.tapeline.notify.notice.CauseRule;
import org.tapeline.notify.notice.CauseTable;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.place.Places;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.TradeWords;
import org.tapeline.notify.words.Words;

/** Tells a field's fitters of a new re-fit case, where they have an address. */
@ApplicationScoped
public class FitterNotices {
  private final StaffNoticeWriter writer;
  private final Staff staff;
  private final Places places;
  private final Contacts contacts;
  private final Words words;
  private final CauseTable table;

  FitterNotices(
      StaffNoticeWriter writer,
      Staff staff,
      Places places,
      Contacts contacts,
      Words words,
      CauseTable table) {
    this.writer = writer;
    this.staff = staff;
    this.places = places;
    this.contacts = contacts;
    this.words = words;
    this.table = table;
  }

  /**
   * @param why a code such as {@code fit-failed}
   */
  public void tell(
      UUID refitCase,
      UUID player,
      String field,
      String team,
      String why,
      Urgency urgency,
      ReceivedEvent event) {
    CauseRule rule = table.of(CauseName.REFIT_FOR_FITTERS);
    staff
        .fitters(field)
        .filter(fitters -> rule.to().contains(CauseName.Recipient.FITTERS))
        .ifPresent(
            fitters ->
                writer.raise(
                    new StaffNoticeWriter.Draft(
                        NoticeKind.REFIT_CASE,
                        refitCase,
                        fitters,
                        rule.urgencyIn(urgency),
                        facts(fitters, player, field, team, why, urgency),
                        "link.fitters",
                        "/fitting/sideline",
                        List.of(player),
                        Optional.of(refitCase),
                        List.of()),
                    event));
  }

  private Facts facts(
      String fitters, UUID player, String field, String team, String why, Urgency urgency) {
    Phrases phrases = words.phrases(staff.languageOf(fitters));
    Facts facts =
        Facts.none()
            .with("player", contacts.firstName(player).orElse(phrases.within("player.unknown")))
            .with("team", TradeWords.team(team))
            .with("place", places.nameOf(field))
            .with("until", phrases.of("until." + urgency.code()));
    return facts.with("why", phrases.why(why, facts));
  }
}
