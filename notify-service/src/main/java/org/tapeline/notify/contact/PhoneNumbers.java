package org.tapeline.notify.contact;

import com.google.i18n.phonenumbers.NumberParseException;
import com.google.i18n.phonenumbers.PhoneNumberUtil;
import com.google.i18n.phonenumbers.PhoneNumberUtil.PhoneNumberType;
import com.google.i18n.phonenumbers.Phonenumber.PhoneNumber;
import jakarta.enterprise.context.ApplicationScoped;

/** What can be told of a telephone number by its form. */
@ApplicationScoped
public class PhoneNumbers {
  private final PhoneNumberUtil phones = PhoneNumberUtil.getInstance();

  /**
   * What speaks against text messages to a number, in words for staff; empty when nothing does. In
   * the United States and Canada mobile and other numbers look alike.
   *
   * @param e164 such as {@code +13035550101}
   */
  public String doubt(String e164) {
    try {
      PhoneNumber number = phones.parse(e164, null);
      return phones.isValidNumber(number)
          ? doubt(phones.getNumberType(number))
          : "not a valid number";
    } catch (NumberParseException e) {
      return "not a valid number";
    }
  }

  private static String doubt(PhoneNumberType type) {
    return switch (type) {
      case MOBILE, FIXED_LINE_OR_MOBILE, PERSONAL_NUMBER, UNKNOWN -> "";
      case FIXED_LINE -> "not a mobile phone: a land line";
      case TOLL_FREE, PREMIUM_RATE, SHARED_COST, UAN -> "not a mobile phone: a service number";
      case VOIP, PAGER, VOICEMAIL -> "may not take text messages";
    };
  }
}
