package org.tapeline.fitting.fieldapp;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.hibernate.annotations.JdbcTypeCode;
import org.hibernate.type.SqlTypes;

/** A session of a phone that was set aside, until somebody has seen it and after. */
@Entity
@Table(name = "set_aside")
public class SetAsideRow extends PanacheEntityBase {
  @Id public UUID command;
  public UUID session;
  public UUID player;
  public String field;
  public String fitter;
  public UUID refused;
  public String code;
  public String sentence;

  @JdbcTypeCode(SqlTypes.JSON)
  public String entries;

  public Instant at;

  @Column(name = "seen_by")
  public String seenBy;

  @Column(name = "seen_at")
  public Instant seenAt;

  /** Newest first. */
  static List<SetAsideRow> unseen() {
    return list("seenAt is null order by at desc");
  }

  static List<SetAsideRow> unseenOf(UUID player) {
    return list("player = ?1 and seenAt is null order by at desc", player);
  }
}
