package org.tapeline.notify.phone;

import com.google.i18n.phonenumbers.NumberParseException;
import com.google.i18n.phonenumbers.PhoneNumberUtil;
import com.google.i18n.phonenumbers.PhoneNumberUtil.PhoneNumberFormat;
import com.google.i18n.phonenumbers.Phonenumber.PhoneNumber;
import java.util.Optional;

/**
 * A telephone number on a page: to be read, and to be called with one tap.
 *
 * @param link a {@code tel:} address (RFC 3966)
 * @param text as people write it
 */
public record Telephone(String link, String text) {
  private static final String E164 = "\\+[1-9][0-9]{6,14}";

  /** Whether it is a number in the form of ITU-T E.164 that can exist. */
  public static boolean isE164(String number) {
    return number.matches(E164) && parse(number).isPresent();
  }

  /** Empty when it is no number; what the library does not know is shown as it is. */
  public static Optional<Telephone> of(String number) {
    String digits = number.replaceAll("[^+0-9]", "");
    if (!digits.matches("\\+?[0-9]{3,15}")) {
      return Optional.empty();
    }
    return Optional.of(
        parse(digits)
            .map(
                parsed ->
                    new Telephone(
                        "tel:" + digits,
                        PhoneNumberUtil.getInstance()
                            .format(parsed, PhoneNumberFormat.INTERNATIONAL)))
            .orElseGet(() -> new Telephone("tel:" + digits, number.strip())));
  }

  private static Optional<PhoneNumber> parse(String number) {
    try {
      PhoneNumber parsed = PhoneNumberUtil.getInstance().parse(number, null);
      return PhoneNumberUtil.getInstance().isPossibleNumber(parsed)
          ? Optional.of(parsed)
          : Optional.empty();
    } catch (NumberParseException e) {
      return Optional.empty();
    }
  }
}
