package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;

/** A parent or guardian; one person however many children. */
@Entity
@Table(name = "guardian")
public class GuardianRow extends PanacheEntityBase {
  @Id public UUID guardian;
  public String name;
  public String email;
  public String phone;
  public String language;

  static Optional<GuardianRow> withEmail(String email) {
    return find("lower(email) = ?1", email.toLowerCase(Locale.ROOT)).firstResultOptional();
  }

  /** Of those without an e-mail address; members of a household may share a telephone. */
  static Optional<GuardianRow> withPhone(String phone, String name) {
    return find("email is null and phone = ?1 and name = ?2", phone, name).firstResultOptional();
  }
}
