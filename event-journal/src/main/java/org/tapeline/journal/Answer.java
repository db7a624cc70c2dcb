package org.tapeline.journal;

/**
 * What a command was answered, kept so that the same command gets the same answer again.
 *
 * @param status the HTTP status
 * @param json the body; {@code null} for none
 */
public record Answer(int status, String json) {

  /** An answer whose body is a value written as JSON. */
  public static Answer of(int status, Object body) {
    return new Answer(status, EventJson.MAPPER.valueToTree(body).toString());
  }
}
