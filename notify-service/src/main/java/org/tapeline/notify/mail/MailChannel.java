package org.tapeline.notify.mail;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.channel.Channel;
import org.tapeline.notify.channel.ChannelLimits;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.staff.Staff;

/** Mail by SMTP. A repeat is known by its Message-ID; SMTP has no way to ask for one. */
@ApplicationScoped
class MailChannel implements Channel {
  private static final String UUID_FORM = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private final MailSettings settings;
  private final MailComposer composer;
  private final Contacts contacts;
  private final Staff staff;

  MailChannel(MailSettings settings, MailComposer composer, Contacts contacts, Staff staff) {
    this.settings = settings;
    this.composer = composer;
    this.contacts = contacts;
    this.staff = staff;
  }

  @Override
  public String code() {
    return "mail";
  }

  @Override
  public boolean on() {
    return true;
  }

  @Override
  public Optional<String> addressOf(String recipient) {
    return recipient.matches(UUID_FORM)
        ? contacts.mailOf(UUID.fromString(recipient))
        : staff.addressOf(recipient);
  }

  @Override
  public ChannelLimits limits() {
    return settings;
  }

  @Override
  public Connection open() {
    return new SmtpConnection(settings, composer);
  }

  @Override
  public String begin(UUID notice) {
    return composer.messageId(notice);
  }

  @Override
  public boolean taken(UUID notice, Optional<String> id) {
    // The server's 250 is all that SMTP says; what it calls the mail is no use to us.
    return true;
  }
}
