package org.tapeline.notify.digest;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.staff.Staff;
import org.tapeline.notify.staff.StaffNoticeWriter;
import org.tapeline.notify.staff.StaffZones;
import org.tapeline.notify.words.Facts;
import org.tapeline.notify.words.Moments;
import org.tapeline.notify.words.Phrases;
import org.tapeline.notify.words.Words;

/** Tells staff of their day, each recipient once a day: the database's key decides. */
@ApplicationScoped
class Digests {
  private final List<Digest> digests;
  private final DigestSettings settings;
  private final Staff staff;
  private final StaffZones zones;
  private final StaffNoticeWriter writer;
  private final Words words;
  private final EntityManager db;

  Digests(
      @All List<Digest> digests,
      DigestSettings settings,
      Staff staff,
      StaffZones zones,
      StaffNoticeWriter writer,
      Words words,
      EntityManager db) {
    this.digests = digests;
    this.settings = settings;
    this.staff = staff;
    this.zones = zones;
    this.writer = writer;
    this.words = words;
    this.db = db;
  }

  /** A digest that is due. */
  record Due(Digest digest, String recipient, ZoneId zone, LocalDate day) {}

  /** Those whose hour has come today and that were not told yet. */
  @Transactional
  List<Due> due(Instant now) {
    return digests.stream()
        .flatMap(d -> d.recipients().stream().flatMap(r -> due(d, r, now).stream()))
        .filter(d -> !told(d))
        .toList();
  }

  private Optional<Due> due(Digest digest, String recipient, Instant now) {
    ZoneId zone = zones.of(recipient);
    return DigestHour.due(now, zone, settings.hours().getOrDefault(recipient, settings.at()))
        .map(day -> new Due(digest, recipient, zone, day));
  }

  private boolean told(Due due) {
    return !db.createNativeQuery(
            "select 1 from digest where recipient = ?1 and kind = ?2 and day = ?3")
        .setParameter(1, due.recipient())
        .setParameter(2, due.digest().kind().code())
        .setParameter(3, due.day())
        .getResultList()
        .isEmpty();
  }

  /** Tells it, unless another process did; without anything to say the day is only noted. */
  @Transactional
  void tell(Due due, Instant now) {
    if (!note(due, now)) {
      return;
    }
    Phrases phrases = words.phrases(staff.languageOf(due.recipient()));
    Content content = due.digest().of(due.recipient(), due.zone(), now, phrases);
    if (content.saysNothing() && !settings.empty()) {
      return;
    }
    String key = due.recipient() + "/" + due.digest().kind().code() + "/" + due.day();
    UUID about = UUID.nameUUIDFromBytes(key.getBytes(StandardCharsets.UTF_8));
    writer.raise(
        new StaffNoticeWriter.Draft(
            due.digest().kind(),
            about,
            due.recipient(),
            Urgency.NORMAL,
            facts(content, due.zone(), now, phrases),
            content.label(),
            content.path(),
            content.players(),
            Optional.empty(),
            content.sections()),
        List.of(about),
        Cause.command(about));
    db.createNativeQuery(
            "update digest set notice = ?1 where recipient = ?2 and kind = ?3 and day = ?4")
        .setParameter(1, Notices.idOf(due.digest().kind(), about, due.recipient()))
        .setParameter(2, due.recipient())
        .setParameter(3, due.digest().kind().code())
        .setParameter(4, due.day())
        .executeUpdate();
  }

  private boolean note(Due due, Instant now) {
    return db.createNativeQuery(
                """
                insert into digest (recipient, kind, day, at) values (?1, ?2, ?3, ?4)
                on conflict do nothing
                """)
            .setParameter(1, due.recipient())
            .setParameter(2, due.digest().kind().code())
            .setParameter(3, due.day())
            .setParameter(4, now)
            .executeUpdate()
        == 1;
  }

  private static Facts facts(Content content, ZoneId zone, Instant now, Phrases phrases) {
    return Facts.none()
        .with("quantity", Integer.toString(content.count()))
        .with("place", content.place())
        .with("date", Moments.date(now, zone, phrases.language()))
        .with("time", Moments.time(now, zone, phrases.language()));
  }
}
