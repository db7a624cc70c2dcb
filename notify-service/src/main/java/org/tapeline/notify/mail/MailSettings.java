package org.tapeline.notify.mail;

import io.smallrye.config.ConfigMapping;
import java.util.Optional;
import org.tapeline.notify.channel.ChannelLimits;

/** How mail is sent, by configuration. */
@ConfigMapping(prefix = "tapeline.mail")
public interface MailSettings extends ChannelLimits {
  String host();

  int port();

  Optional<String> username();

  Optional<String> password();

  Security security();

  /** Address, or name and address, that mails come from. */
  String from();

  /** Right-hand side of Message-ID and calendar UID. */
  String domain();

  /** How the connection is protected. */
  enum Security {
    NONE,
    STARTTLS,
    TLS
  }
}
