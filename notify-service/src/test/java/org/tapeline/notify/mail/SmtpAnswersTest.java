package org.tapeline.notify.mail;

import static org.assertj.core.api.Assertions.assertThat;

import jakarta.mail.AuthenticationFailedException;
import jakarta.mail.MessagingException;
import jakarta.mail.SendFailedException;
import jakarta.mail.internet.AddressException;
import jakarta.mail.internet.InternetAddress;
import org.eclipse.angus.mail.smtp.SMTPAddressFailedException;
import org.eclipse.angus.mail.smtp.SMTPSendFailedException;
import org.eclipse.angus.mail.smtp.SMTPSenderFailedException;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.notify.channel.SendOutcome;

@DisplayName("An answer of the mail server")
class SmtpAnswersTest {

  private static InternetAddress rosa() throws AddressException {
    return new InternetAddress("rosa@families.example.org");
  }

  private static SendOutcome address(int code, String sentence) throws AddressException {
    MessagingException failure = new SendFailedException("Invalid Addresses");
    failure.setNextException(new SMTPAddressFailedException(rosa(), "RCPT TO", code, sentence));
    return SmtpAnswers.of(failure);
  }

  private static SMTPSendFailedException data(int code, String sentence) {
    return new SMTPSendFailedException("DATA", code, sentence, null, null, null, null);
  }

  @Test
  @DisplayName("of 5yz to an address is for good, and only its code is kept")
  void addressRefused() throws AddressException {
    assertThat(address(550, "550 5.1.1 <rosa@families.example.org> unknown"))
        .isEqualTo(new SendOutcome.AddressRefused("550 5.1.1"));
    assertThat(address(550, "550 no such user rosa"))
        .isEqualTo(new SendOutcome.AddressRefused("550"));
  }

  @Test
  @DisplayName("of 4yz is worth another try")
  void later() throws AddressException {
    assertThat(address(450, "450 4.2.0 greylisted")).isEqualTo(new SendOutcome.Failed("450 4.2.0"));
    assertThat(SmtpAnswers.of(data(451, "451 4.3.0 later")))
        .isEqualTo(new SendOutcome.Failed("451 4.3.0"));
    assertThat(SmtpAnswers.of(data(421, "421 4.3.2 shutting down")))
        .isEqualTo(new SendOutcome.Down("421 4.3.2"));
  }

  @Test
  @DisplayName("of 5yz to the message is for good")
  void messageRefused() {
    assertThat(SmtpAnswers.of(data(554, "554 5.7.1 refused")))
        .isEqualTo(new SendOutcome.MessageRefused("554 5.7.1"));
  }

  @Test
  @DisplayName("to our own log-in or sender address does not count against the person")
  void ourOwnFault() throws AddressException {
    assertThat(SmtpAnswers.of(new AuthenticationFailedException("535 5.7.8 no")))
        .isEqualTo(new SendOutcome.Down("log-in-refused"));
    assertThat(
            SmtpAnswers.of(
                new SMTPSenderFailedException(rosa(), "MAIL FROM", 553, "553 5.1.8 sender")))
        .isEqualTo(new SendOutcome.Down("553 5.1.8"));
  }

  @Test
  @DisplayName("that never came is worth another try")
  void lost() {
    assertThat(SmtpAnswers.of(new MessagingException("reset")))
        .isEqualTo(new SendOutcome.Down("connection-lost"));
  }
}
