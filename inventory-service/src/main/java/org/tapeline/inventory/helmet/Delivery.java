package org.tapeline.inventory.helmet;

import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import org.tapeline.inventory.helmet.HelmetCommand.Receive;

/**
 * What is the same for all helmets of a delivery.
 *
 * @param certifiedUntil the last day on their labels; empty when they have none, and then the
 *     cautious rule dates them
 */
public record Delivery(
    String model,
    String size,
    String lot,
    LocalDate manufacturedOn,
    Optional<LocalDate> certifiedUntil,
    String place) {

  Receive receive(Instant at) {
    return new Receive(model, size, lot, manufacturedOn, certifiedUntil, place, at);
  }
}
