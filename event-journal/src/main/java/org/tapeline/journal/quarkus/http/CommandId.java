package org.tapeline.journal.quarkus.http;

import java.util.UUID;

/** The id that the sender of a command made, so that sending it twice does it once. */
public final class CommandId {
  public static final String HEADER = "Idempotency-Key";

  private CommandId() {}

  /**
   * @throws Problem when there is none or it is not a UUID
   */
  public static UUID of(String text) {
    try {
      return UUID.fromString(text == null ? "" : text.strip());
    } catch (IllegalArgumentException e) {
      throw Problem.badRequest(
          "idempotency-key",
          "Send the header "
              + HEADER
              + " with a UUID that you make, the same one when you send the request again.",
          new Problem.FieldError(HEADER, "Needed: a UUID."));
    }
  }
}
