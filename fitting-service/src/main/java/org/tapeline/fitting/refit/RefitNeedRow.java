package org.tapeline.fitting.refit;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** What a case needs, and when it is there. */
@Entity
@Table(name = "refit_need")
@IdClass(RefitNeedRow.Key.class)
public class RefitNeedRow extends PanacheEntityBase {
  @Id
  @Column(name = "refit_case")
  public UUID refitCase;

  @Id
  @Column(name = "need_key")
  public String needKey;

  public String need;

  @Column(name = "arrives_at")
  public Instant arrivesAt;

  public boolean waits;

  /** Both together. */
  public record Key(UUID refitCase, String needKey) implements Serializable {}

  static List<RefitNeedRow> of(UUID refitCase) {
    return list("refitCase = ?1 order by needKey", refitCase);
  }
}
