package org.tapeline.fitting.fieldapp;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.protocol.Protocol;

/**
 * All that a phone holds so that a fitter can work without signal, and no more: of a player the
 * given name and the initial, no birth date, no address, nothing of the guardians.
 *
 * @param fitter who asked: the phone sends what is entered under this name only
 * @param wearStateHoldsSeconds a state older than this is shown as "not known"
 * @param models the sizes of each model, small to large
 * @param parts pieces by field, helmet model and part, as far as the records tell
 * @param said codes of models, sizes and parts in words
 */
public record FieldPack(
    String fitter,
    long wearStateHoldsSeconds,
    List<Field> fields,
    Map<String, List<String>> models,
    Map<String, String> said,
    Protocol protocol,
    List<Player> players,
    List<Helmet> helmets,
    Map<String, Map<String, Map<String, Integer>>> parts,
    List<Session> sessions) {

  /** A field at which the fitter works. */
  public record Field(String code, String name, double altitudeM, String zone) {}

  /**
   * A player of one of the fields, or one whose re-fit is booked there.
   *
   * @param name given name and the initial of the family name
   * @param tag the helmet of the sign-off that holds; empty for none
   * @param measuredAt when the newest advice was given; empty when never measured
   * @param refit when and where the re-fit is; empty for none or not booked
   */
  public record Player(
      UUID player,
      String name,
      String number,
      String team,
      String field,
      Wear state,
      String tag,
      List<Advised> advised,
      Optional<Instant> measuredAt,
      String refit) {}

  /** Whether the player may take the field, as at {@code asOf} of the pack's header. */
  public record Wear(String code, String said, String reason) {}

  /** The size that is advised, with the second helmet to bring. */
  public record Advised(
      String model, Optional<String> size, Optional<String> second, String reason) {}

  /** A helmet at one of the fields: what decides who may have it. */
  public record Helmet(
      String tag,
      String model,
      String size,
      String place,
      String state,
      Optional<UUID> holder,
      List<UUID> keptFor,
      Optional<String> certifiedUntil) {}

  /** A session that another phone can go on with. */
  public record Session(UUID session, UUID player, List<Event> events) {}

  /**
   * An event of a session.
   *
   * @param type its short name, such as {@code helmet-tried}
   */
  public record Event(String type, Record data) {}

  /** The pack as it is sent, with the moment up to which it is true. */
  public record Sent(String json, String tag, Instant asOf) {}
}
