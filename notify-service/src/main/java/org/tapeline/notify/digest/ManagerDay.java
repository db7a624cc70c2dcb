package org.tapeline.notify.digest;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.staff.Staff;
import org.tapeline.notify.unreached.StaffList;
import org.tapeline.notify.unreached.UnreachedPeople;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.Phrases;

/** The equipment manager's morning: who was not reached, what staff did not get, what is old. */
@ApplicationScoped
class ManagerDay implements Digest {
  private static final Duration A_DAY = Duration.ofDays(1);

  private final UnreachedPeople people;
  private final DigestSettings settings;
  private final EntityManager db;

  ManagerDay(UnreachedPeople people, DigestSettings settings, EntityManager db) {
    this.people = people;
    this.settings = settings;
    this.db = db;
  }

  @Override
  public NoticeKind kind() {
    return NoticeKind.MANAGER_DAY;
  }

  @Override
  public List<String> recipients() {
    return List.of(Staff.MANAGER);
  }

  @Override
  public Content of(String recipient, ZoneId zone, Instant now, Phrases phrases) {
    UnreachedPeople.Found missing = people.list(Optional.empty(), StaffList.MOST);
    StaffList list = StaffList.of(missing, phrases);
    List<OpenCase> old = OpenCase.openedBefore(db, now.minus(settings.tooLong()));
    List<Letter.Section> sections = new ArrayList<>();
    if (!list.lines().isEmpty()) {
      sections.add(new Letter.Section(phrases.of("list.not-reached"), list.lines()));
    }
    Content.add(sections, phrases, "list.undelivered", givenUp(now), n -> givenUp(n, phrases));
    Content.add(sections, phrases, "list.old", old, c -> old(c, zone, phrases));
    return new Content(
        missing.families(),
        "",
        sections,
        Stream.concat(
                list.players().stream(),
                old.stream().limit(Phrases.MOST_IN_A_LIST).map(OpenCase::player))
            .distinct()
            .toList(),
        "link.unreached",
        "/notify/unreached");
  }

  /** Staff are not among the people not reached: an address of the association is wrong. */
  private static List<NoticeRow> givenUp(Instant now) {
    return NoticeRow.<NoticeRow>list(
            "state = 'undeliverable' and changedAt > ?1 order by changedAt desc", now.minus(A_DAY))
        .stream()
        .filter(n -> !n.toGuardian())
        .toList();
  }

  private static String givenUp(NoticeRow notice, Phrases phrases) {
    boolean address = notice.why.equals("no-address") || notice.why.equals("address-refused");
    return line(
        notice.recipient, phrases.within("unreached." + (address ? notice.why : "other")), phrases);
  }

  private static String old(OpenCase c, ZoneId zone, Phrases phrases) {
    String since = Moments.date(c.openedAt().orElseThrow(), zone, phrases.language());
    return line(
        c.child(phrases.within("player.unknown")),
        phrases.of("list.since", Facts.none().with("date", since)),
        phrases);
  }

  private static String line(String who, String why, Phrases phrases) {
    return phrases.of("list.person", Facts.none().with("player", who).with("why", why));
  }
}
