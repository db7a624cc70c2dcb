package org.tapeline.notify.mail;

import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPSenderFailedException;
import org.eclipse.angus.mail.util.MailConnectException;
import org.tapeline.notify.channel.SendOutcome;

/**
 * Reads what a failed sending means. RFC 5321, section 4.2.1: a 5yz answer is for good (a hard
 * bounce), a 4yz one for now (a soft bounce); 421 says that the whole server goes. Only the code is
 * kept: the sentence may repeat the address.
 */
final class SmtpAnswers {
  private static final Pattern ENHANCED = Pattern.compile("^[0-9]{3}[ -]([0-9]\\.[0-9.]+)");

  private static final int GOING = 421;

  private SmtpAnswers() {}

  static SendOutcome of(MessagingException failure) {
    for (Exception e = failure; e instanceof MessagingException m; e = m.getNextException()) {
      if (m instanceof SMTPAddressFailedException address) {
        String code = code(address.getReturnCode(), address.getMessage());
        return permanent(address.getReturnCode())
            ? new SendOutcome.AddressRefused(code)
            : new SendOutcome.Failed(code);
      }
    }
    return switch (failure) {
      case SMTPSendFailedException sending when permanent(sending.getReturnCode()) ->
          new SendOutcome.MessageRefused(code(sending.getReturnCode(), sending.getMessage()));
      case SMTPSendFailedException sending when sending.getReturnCode() == GOING ->
          new SendOutcome.Down(code(sending.getReturnCode(), sending.getMessage()));
      case SMTPSendFailedException sending ->
          new SendOutcome.Failed(code(sending.getReturnCode(), sending.getMessage()));
      case SMTPSenderFailedException sender ->
          new SendOutcome.Down(code(sender.getReturnCode(), sender.getMessage()));
      // Wrong credentials are for whoever runs this to mend, not a reason to give up on a person.
      case AuthenticationFailedException login -> new SendOutcome.Down("log-in-refused");
      case MailConnectException connect -> new SendOutcome.Down("connect-failed");
      default -> new SendOutcome.Down("connection-lost");
    };
  }

  private static boolean permanent(int code) {
    return code >= 500 && code < 600;
  }

  private static String code(int code, String sentence) {
    Matcher enhanced = ENHANCED.matcher(sentence == null ? "" : sentence);
    return enhanced.find() ? code + " " + enhanced.group(1) : Integer.toString(code);
  }
}
