package org.tapeline.proof.faults.season;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.proof.faults.process.Part;

/**
 * Something that somebody asks for, with what must have come of it once it was accepted.
 *
 * @param id the Idempotency-Key: the same however often it is sent
 * @param kind such as {@code damage}, for counting
 * @param service who takes it
 * @param user who asks; empty for a guardian behind a link
 * @param address path at the gateway
 * @param type of the body, such as {@code application/json}
 * @param about the player, helmet, session or request that it is about
 * @param events how many events of each type must follow from it at once in that service's journal
 * @param headers beside the usual ones
 */
public record Command(
    UUID id,
    String kind,
    Part service,
    Optional<String> user,
    String address,
    String type,
    String body,
    String about,
    Map<String, Integer> events,
    Map<String, String> headers) {
  private static final String JSON = "application/json";
  private static final String FORM = "application/x-www-form-urlencoded";

  public Command {
    events = Map.copyOf(events);
    headers = Map.copyOf(headers);
  }

  /** One of staff, as JSON; the address is below the service's {@code /api/}. */
  static Command json(
      UUID id, String kind, Part service, String user, String path, String body, String about) {
    String address = "/" + service.code() + "/api/" + path;
    return new Command(
        id, kind, service, Optional.of(user), address, JSON, body, about, Map.of(), Map.of());
  }

  /** A guardian's answer behind a link. */
  static Command form(UUID id, String kind, Part service, String address, String body) {
    return new Command(
        id, kind, service, Optional.empty(), address, FORM, body, "", Map.of(), Map.of());
  }

  /** The same as a file of rows. */
  Command asCsv() {
    return new Command(
        id, kind, service, user, address, "text/csv; charset=utf-8", body, about, events, headers);
  }

  /** From which follows one event of that type. */
  Command leadingTo(String type) {
    return leadingTo(type, 1);
  }

  Command leadingTo(String type, int times) {
    Map<String, Integer> more = new HashMap<>(events);
    more.put(type, times);
    return new Command(id, kind, service, user, address, this.type, body, about, more, headers);
  }

  Command withHeader(String name, String value) {
    Map<String, String> more = new HashMap<>(headers);
    more.put(name, value);
    return new Command(id, kind, service, user, address, type, body, about, events, more);
  }
}
