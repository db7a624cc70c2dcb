package org.tapeline.notify.mail;

import io.smallrye.config.ConfigMapping;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** How mail is sent, by configuration. */
@ConfigMapping(prefix = "tapeline.mail")
public interface MailSettings {
  String host();

  int port();

  Optional<String> username();

  Optional<String> password();

  Security security();

  /** Address, or name and address, that mails come from. */
  String from();

  /** Right-hand side of Message-ID and calendar UID. */
  String domain();

  /** How many mails are sent at the same time. */
  int connections();

  /** For connecting, and for each answer of the server. */
  Duration timeout();

  /** After how long a try that never ended counts as cut off. */
  Duration cutOffAfter();

  List<Duration> backOff();

  Duration giveUpAfter();

  /** How the connection is protected. */
  enum Security {
    NONE,
    STARTTLS,
    TLS
  }
}
