package org.tapeline.notify.sheet;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.tapeline.journal.UuidV7;
import org.tapeline.journal.quarkus.file.QrCode;
import org.tapeline.notify.contact.Player;
import org.tapeline.notify.notice.NoticeTexts;
import org.tapeline.notify.phone.Telephone;
import org.tapeline.notify.staff.Staff;
import org.tapeline.notify.unreached.Unreached;
import org.tapeline.notify.unreached.UnreachedPeople;
import org.tapeline.notify.unreached.UnreachedWords;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Words;

/** The slips of a team: for families whom neither mail nor text message reached. */
@ApplicationScoped
class Slips {
  private static final int MOST = 200;

  private final UnreachedPeople people;
  private final NoticeTexts texts;
  private final Staff staff;
  private final Words words;

  Slips(UnreachedPeople people, NoticeTexts texts, Staff staff, Words words) {
    this.people = people;
    this.texts = texts;
    this.staff = staff;
    this.words = words;
  }

  /** The fields at which the team's players train; empty for a team that is not known here. */
  @Transactional
  List<String> fieldsOf(String team) {
    return Player.<Player>list("team = ?1 and field is not null", team).stream()
        .map(player -> player.field)
        .distinct()
        .sorted()
        .toList();
  }

  /** The most urgent first. Who was erased, or whose words were, has none. */
  @Transactional
  List<Slip> of(String team) {
    UnreachedWords say = new UnreachedWords(staff.zone());
    return people.ofTeam(team, MOST).shown().stream()
        .flatMap(who -> slip(who, say).stream())
        .toList();
  }

  ZoneId zone() {
    return staff.zone();
  }

  private Optional<Slip> slip(Unreached who, UnreachedWords say) {
    List<Letter> letters =
        who.notices().stream().flatMap(notice -> texts.letterOf(notice).stream()).toList();
    if (letters.isEmpty()) {
      return Optional.empty();
    }
    Letter newest = letters.getLast();
    return Optional.of(
        new Slip(
            who.guardian(),
            who.name(),
            who.children().stream().map(say::child).collect(Collectors.joining("; ")),
            words.phrases(Language.of(newest.language()).orElse(Language.ENGLISH)),
            letters,
            phone(who),
            QrCode.of(newest.link().address()),
            who.notices(),
            UuidV7.next()));
  }

  private String phone(Unreached who) {
    return who.fields().stream()
        .sorted()
        .flatMap(field -> staff.fitters(field).stream())
        .flatMap(fitters -> staff.phoneOf(fitters).stream())
        .flatMap(number -> Telephone.of(number).stream())
        .map(Telephone::text)
        .findFirst()
        .orElse("");
  }
}
