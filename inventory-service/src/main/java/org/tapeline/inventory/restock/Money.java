package org.tapeline.inventory.restock;

import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.tapeline.journal.quarkus.http.Problem;

/** An amount as people write it. */
final class Money {
  private static final Pattern AMOUNT = Pattern.compile("([0-9]{1,9})(?:\\.([0-9]{1,2}))?");

  private Money() {}

  /**
   * In hundredths; empty when nothing was written.
   *
   * @throws Problem when it is not an amount
   */
  static OptionalLong of(String text) {
    String written = text == null ? "" : text.strip().replace(",", "");
    if (written.isEmpty()) {
      return OptionalLong.empty();
    }
    Matcher amount = AMOUNT.matcher(written);
    if (!amount.matches()) {
      String say = "Write an amount such as 500 or 1,250.50, or leave it empty.";
      throw Problem.badRequest("budget", say, new Problem.FieldError("budget", say));
    }
    String cents = amount.group(2) == null ? "00" : (amount.group(2) + "0").substring(0, 2);
    return OptionalLong.of(Long.parseLong(amount.group(1)) * 100 + Long.parseLong(cents));
  }
}
