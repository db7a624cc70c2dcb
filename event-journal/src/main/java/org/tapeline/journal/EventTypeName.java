package org.tapeline.journal;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The stable name of an event type: {@code org.tapeline.<service>.<event>.v<version>}.
 *
 * @param service the producing service, such as {@code fitting}
 * @param event the event's short name, such as {@code fit-passed}
 * @param version 1 or more
 */
public record EventTypeName(String service, String event, int version) {
  private static final Pattern FORM =
      Pattern.compile("org\\.tapeline\\.([a-z]+)\\.([a-z][a-z-]*)\\.v([1-9][0-9]{0,3})");

  public EventTypeName {
    if (!FORM.matcher(text(service, event, version)).matches()) {
      throw new IllegalArgumentException(
          "Not a name of an event type: " + text(service, event, version));
    }
  }

  /**
   * @throws IllegalArgumentException when the text is not of the form above
   */
  public static EventTypeName parse(String text) {
    Matcher m = FORM.matcher(text);
    if (!m.matches()) {
      throw new IllegalArgumentException("Not a name of an event type: " + text);
    }
    return new EventTypeName(m.group(1), m.group(2), Integer.parseInt(m.group(3)));
  }

  /** The version after it. */
  EventTypeName next() {
    return new EventTypeName(service, event, version + 1);
  }

  public String text() {
    return text(service, event, version);
  }

  private static String text(String service, String event, int version) {
    return "org.tapeline." + service + "." + event + ".v" + version;
  }
}
