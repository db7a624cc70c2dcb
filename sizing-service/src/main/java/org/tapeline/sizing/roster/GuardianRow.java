package org.tapeline.sizing.roster;

import io.quarkus.hibernate.orm.panache.PanacheEntityBase;
import jakarta.persistence.Entity;
import jakarta.persistence.Id;
import jakarta.persistence.Table;
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

  /** Known by e-mail address, else by telephone number and name together. */
  static Optional<GuardianRow> known(String name, String email, String phone) {
    return email != null
        ? find("lower(email) = ?1", email.toLowerCase()).firstResultOptional()
        : find("email is null and phone = ?1 and name = ?2", phone, name).firstResultOptional();
  }
}
