package org.tapeline.notify.notice;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/** One thing that a notice covers. */
@Entity
@Table(name = "notice_cover")
@IdClass(NoticeCoverRow.Key.class)
public class NoticeCoverRow extends PanacheEntityBase {

  /** A notice and what it is about. */
  public record Key(UUID notice, UUID about) implements Serializable {}

  @Id public UUID notice;
  @Id public UUID about;
  public String kind;
  public String recipient;

  @Column(name = "refit_case")
  public UUID refitCase;

  public UUID player;

  @Column(name = "slot_starts_at")
  public Instant slotStartsAt;

  @Column(name = "slot_field")
  public String slotField;

  /** Came to an end while the notice waited. */
  public boolean over;

  static NoticeCoverRow of(NewNotice n, Cover cover) {
    NoticeCoverRow row = new NoticeCoverRow();
    row.notice = n.id();
    row.about = cover.about();
    row.kind = n.kind().code();
    row.recipient = n.recipient();
    row.refitCase = cover.refitCase().orElse(null);
    row.player = cover.player().orElse(null);
    row.slotStartsAt = cover.slotStartsAt().orElse(null);
    row.slotField = cover.slotField().orElse(null);
    return row;
  }

  NoticeOfCase ofCase(NoticeRow row) {
    return new NoticeOfCase(
        NoticeKind.of(kind),
        row.takenBack(),
        row.attempts > 0 || row.state.equals("acknowledged"),
        Optional.ofNullable(slotStartsAt),
        Optional.ofNullable(slotField));
  }
}
