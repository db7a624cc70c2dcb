package org.tapeline.notify.notice;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.CollectionTable;
import jakarta.persistence.Column;
import jakarta.persistence.ElementCollection;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.JoinColumn;
import jakarta.persistence.LockModeType;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.Collection;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.tapeline.journal.RecordedEvent;

/** The newest state of a notice's stream, and when it is to be tried next. */
@Entity
@Table(name = "notice")
public class NoticeRow extends PanacheEntityBase {
  private static final String GUARDIAN = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  @Id public UUID notice;

  public UUID about;
  public String kind;
  public String recipient;
  public long version;
  public String state;
  public String urgency;
  public String template;

  @Column(name = "template_version")
  public int templateVersion;

  public String language;

  @Column(name = "refit_case")
  public UUID refitCase;

  @Column(name = "slot_starts_at")
  public Instant slotStartsAt;

  @Column(name = "slot_field")
  public String slotField;

  @Column(name = "correlation_id")
  public UUID correlationId;

  @Column(name = "raised_event")
  public UUID raisedEvent;

  @Column(name = "raised_at")
  public Instant raisedAt;

  @Column(name = "changed_at")
  public Instant changedAt;

  public String why;
  public int attempts;

  /** The channel that it waits for, or went out by; {@code null} when none reaches the person. */
  public String channel;

  /** Since when it is this channel's. */
  @Column(name = "channel_since")
  public Instant channelSince;

  /** Tries on this channel that count against the notice. */
  @Column(name = "channel_attempts")
  public int channelAttempts;

  /** When it was last looked at for a channel to move on to. */
  @Column(name = "looked_at")
  public Instant lookedAt;

  @Column(name = "next_try_at")
  public Instant nextTryAt;

  /** When a channel took it first. */
  @Column(name = "sent_at")
  public Instant sentAt;

  /** When to look whether the next step of its escalation is due; {@code null}: never again. */
  @Column(name = "escalate_at")
  public Instant escalateAt;

  /** Since when people have to reach the person; {@code null} while channels may. */
  @Column(name = "people_at")
  public Instant peopleAt;

  @ElementCollection
  @CollectionTable(name = "notice_cause", joinColumns = @JoinColumn(name = "notice"))
  @Column(name = "event")
  public Set<UUID> causes = new HashSet<>();

  @ElementCollection
  @CollectionTable(name = "notice_player", joinColumns = @JoinColumn(name = "notice"))
  @Column(name = "player")
  public Set<UUID> players = new HashSet<>();

  /** As its first event tells; by which channel it goes is found out next. */
  static NoticeRow of(NoticeRaised raised, RecordedEvent event) {
    NoticeRow row = new NoticeRow();
    row.notice = raised.notice();
    row.about = raised.notice();
    row.kind = raised.kind();
    row.recipient = raised.recipient();
    row.urgency = raised.urgency();
    row.template = raised.template();
    row.templateVersion = raised.templateVersion();
    row.language = raised.language();
    row.refitCase = raised.refitCase();
    row.correlationId = event.correlationId();
    row.raisedAt = raised.at();
    row.channel = "mail";
    row.channelSince = raised.at();
    row.nextTryAt = raised.at();
    return row;
  }

  /** The row, locked until the transaction ends; {@code null} when there is none. */
  public static NoticeRow locked(UUID notice) {
    return findById(notice, LockModeType.PESSIMISTIC_WRITE);
  }

  /** Several notices, read at once; by id. */
  public static Map<UUID, NoticeRow> byId(Collection<UUID> notices) {
    return NoticeRow.<NoticeRow>list("notice in ?1", notices).stream()
        .collect(Collectors.toMap(n -> n.notice, Function.identity()));
  }

  /** Several notices with their players, read at once; by id. */
  public static Map<UUID, NoticeRow> withPlayers(Collection<UUID> notices) {
    return NoticeRow.<NoticeRow>find(
            "select distinct n from NoticeRow n left join fetch n.players where n.notice in ?1",
            notices)
        .list()
        .stream()
        .collect(Collectors.toMap(n -> n.notice, Function.identity()));
  }

  /** Whether it goes to a guardian, and not to staff. */
  public boolean toGuardian() {
    return recipient.matches(GUARDIAN);
  }

  /** Whether nobody can have it: what a channel took stays readable. */
  public boolean takenBack() {
    return state.equals("cancelled") && sentAt == null;
  }
}
