package org.tapeline.sizing.roster;

import com.google.i18n.phonenumbers.NumberParseException;
import com.google.i18n.phonenumbers.PhoneNumberUtil;
import com.google.i18n.phonenumbers.PhoneNumberUtil.PhoneNumberFormat;
import com.google.i18n.phonenumbers.PhoneNumberUtil.PhoneNumberType;
import com.google.i18n.phonenumbers.Phonenumber.PhoneNumber;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** A telephone number as somebody wrote it. */
final class PhoneText {
  private static final PhoneNumberUtil PHONES = PhoneNumberUtil.getInstance();

  private static final Set<PhoneNumberType> NO_TEXTS =
      EnumSet.of(
          PhoneNumberType.FIXED_LINE,
          PhoneNumberType.TOLL_FREE,
          PhoneNumberType.PREMIUM_RATE,
          PhoneNumberType.SHARED_COST,
          PhoneNumberType.UAN);

  private PhoneText() {}

  /**
   * A number that exists by the country's numbering plan.
   *
   * @param e164 such as {@code +13035550101}
   * @param takesTexts false when it cannot be a mobile phone's; in the United States the two look
   *     alike, and it is true for both
   */
  record Number(String e164, boolean takesTexts) {}

  /**
   * @param region two letters of the country whose numbers need no country code
   * @return empty for what is no valid number there
   */
  static Optional<Number> read(String text, String region) {
    try {
      PhoneNumber number = PHONES.parse(text, region);
      return PHONES.isValidNumber(number)
          ? Optional.of(
              new Number(
                  PHONES.format(number, PhoneNumberFormat.E164),
                  !NO_TEXTS.contains(PHONES.getNumberType(number))))
          : Optional.empty();
    } catch (NumberParseException e) {
      return Optional.empty();
    }
  }
}
