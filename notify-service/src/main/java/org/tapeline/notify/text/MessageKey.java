package org.tapeline.notify.text;

import java.util.Optional;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What we call a message to the gateway: the notice's id and which of its messages it is.
 *
 * @param group from 1
 */
record MessageKey(UUID notice, int group) {
  private static final Pattern FORM =
      Pattern.compile("([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})-([1-9][0-9]{0,4})");

  static String of(UUID notice, int group) {
    return notice + "-" + group;
  }

  /** Empty for what is none. */
  static Optional<MessageKey> read(String text) {
    Matcher parts = FORM.matcher(text);
    return parts.matches()
        ? Optional.of(
            new MessageKey(UUID.fromString(parts.group(1)), Integer.parseInt(parts.group(2))))
        : Optional.empty();
  }
}
