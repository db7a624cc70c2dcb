package org.tapeline.fitting.refit;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Column;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.fitting.session.Need;

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

  /** The helmet that is kept for it. */
  public String tag;

  @Column(name = "arrives_at")
  public Instant arrivesAt;

  /** Nothing is kept for it yet: it has to be ordered or to come back. */
  public boolean missing;

  /** Both together. */
  public record Key(UUID refitCase, String needKey) implements Serializable {}

  static void keep(UUID refitCase, Need need) {
    if (findById(new Key(refitCase, need.key())) == null) {
      RefitNeedRow row = new RefitNeedRow();
      row.refitCase = refitCase;
      row.needKey = need.key();
      row.persistAndFlush();
    }
  }

  static List<RefitNeedRow> of(UUID refitCase) {
    return list("refitCase = ?1 order by needKey", refitCase);
  }

  /** Those of each of these cases. */
  static Map<UUID, List<RefitNeedRow>> ofAll(Collection<UUID> refitCases) {
    return refitCases.isEmpty()
        ? Map.of()
        : RefitNeedRow.<RefitNeedRow>list("refitCase in ?1 order by needKey", refitCases).stream()
            .collect(Collectors.groupingBy(row -> row.refitCase));
  }

  static List<Need> needs(UUID refitCase) {
    return of(refitCase).stream().map(RefitNeedRow::need).toList();
  }

  static Optional<RefitNeedRow> find(UUID refitCase, Need need) {
    return findByIdOptional(new Key(refitCase, need.key()));
  }

  Need need() {
    return Need.ofKey(needKey);
  }

  void kept(Optional<String> helmet, Instant from) {
    tag = helmet.orElse(null);
    arrivesAt = from;
    missing = false;
    persistAndFlush();
  }

  void expected(Instant from) {
    tag = null;
    arrivesAt = from;
    missing = true;
    persistAndFlush();
  }

  void unknown() {
    tag = null;
    arrivesAt = null;
    missing = false;
    persistAndFlush();
  }

  RefitRules.Arrival arrival() {
    return new RefitRules.Arrival(Optional.ofNullable(arrivesAt));
  }

  boolean stillComing(Instant now) {
    return missing || arrivesAt == null || arrivesAt.isAfter(now);
  }
}
