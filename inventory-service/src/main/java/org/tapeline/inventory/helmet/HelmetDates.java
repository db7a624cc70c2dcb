package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.LocalDate;
import java.util.Optional;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetCommand.ComeBack;
import org.tapeline.inventory.helmet.HelmetCommand.Receive;
import org.tapeline.inventory.helmet.HelmetCommand.Recertify;
import org.tapeline.inventory.policy.HelmetPolicyFile;

/**
 * Puts the policy's last day on whatever dates a helmet: one that comes without a date gets the
 * cautious one, and no label outlasts the last age.
 */
@ApplicationScoped
public class HelmetDates {
  private final Database database;
  private final HelmetPolicyFile policy;

  HelmetDates(Database database, HelmetPolicyFile policy) {
    this.database = database;
    this.policy = policy;
  }

  HelmetCommand dated(Helmet helmet, HelmetCommand command) {
    return switch (command) {
      case Receive c -> received(c);
      case ComeBack c ->
          new ComeBack(
              c.certifiedUntil().map(label -> capped(helmet, label)), c.place(), c.by(), c.at());
      case Recertify c ->
          new Recertify(capped(helmet, c.certifiedUntil()), c.how(), c.by(), c.at());
      case HelmetCommand other -> other;
    };
  }

  private Receive received(Receive c) {
    LocalDate until =
        policy
            .get()
            .usableUntil(c.model(), c.manufacturedOn(), c.certifiedUntil(), c.manufacturedOn());
    return new Receive(
        c.model(), c.size(), c.lot(), c.manufacturedOn(), Optional.of(until), c.place(), c.at());
  }

  private LocalDate capped(Helmet helmet, LocalDate label) {
    return database
        .first(
            "select manufactured_on from helmet where tag = ? and manufactured_on is not null",
            row -> row.getObject(1, LocalDate.class),
            helmet.tag())
        .map(made -> policy.get().usableUntil(helmet.model(), made, Optional.of(label), made))
        .orElse(label);
  }
}
