package org.tapeline.fitting.today;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.IdClass;
import jakarta.persistence.Table;
import java.io.Serializable;
import java.util.Collection;
import java.util.List;
import java.util.UUID;
import org.tapeline.fitting.recheck.RecheckRules.Check;

/** A re-check that was told to be due. */
@Entity
@Table(name = "recheck_told")
@IdClass(ToldRow.Key.class)
public class ToldRow extends PanacheEntityBase {
  @Id public UUID session;
  @Id public String rule;
  @Id public String cause;

  /** All together. */
  public record Key(UUID session, String rule, String cause) implements Serializable {}

  /**
   * Weather comes and goes: one cold season is one cause, however often somebody looks at the
   * thermometer.
   */
  static Key key(UUID session, Check check) {
    String cause = check.trigger().air() ? "air" : check.cause().toString();
    return new Key(session, check.trigger().code(), cause);
  }

  static void keep(Key key) {
    ToldRow row = new ToldRow();
    row.session = key.session();
    row.rule = key.rule();
    row.cause = key.cause();
    row.persistAndFlush();
  }

  static List<Key> ofSessions(Collection<UUID> sessions) {
    return sessions.isEmpty()
        ? List.of()
        : ToldRow.<ToldRow>list("session in ?1", sessions).stream()
            .map(row -> new Key(row.session, row.rule, row.cause))
            .toList();
  }
}
