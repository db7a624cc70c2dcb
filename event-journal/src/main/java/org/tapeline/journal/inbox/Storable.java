package org.tapeline.journal.inbox;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * A record may hold anything; what is parked of it must fit into text columns, which hold no NUL.
 * With one no record was readable anyhow, and it stays as it came in Kafka, whose partition and
 * offset are parked with it.
 */
final class Storable {
  private static final char NUL = '\0';
  private static final char SHOWN_FOR_NUL = '\u2400';

  private Storable() {}

  /** The text with the picture of "NUL" where one is; {@code null} stays. */
  static String text(String text) {
    return text == null ? null : text.replace(NUL, SHOWN_FOR_NUL);
  }

  static Map<String, String> texts(Map<String, String> texts) {
    Map<String, String> storable = new LinkedHashMap<>();
    texts.forEach((name, value) -> storable.put(text(name), text(value)));
    return storable;
  }
}
