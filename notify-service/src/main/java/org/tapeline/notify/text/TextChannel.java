package org.tapeline.notify.text;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.notify.channel.Channel;
import org.tapeline.notify.channel.ChannelLimits;
import org.tapeline.notify.contact.Contacts;
import org.tapeline.notify.staff.Staff;

/**
 * Text messages through the gateway. Tries of one message carry one key, so that a gateway that
 * keeps keys sends it once; only after it said that a message failed is the next a new one.
 */
@ApplicationScoped
class TextChannel implements Channel {
  static final String CODE = "text";
  private static final String UUID_FORM = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private final TextSettings settings;
  private final Contacts contacts;
  private final Staff staff;
  private final Clock clock;

  TextChannel(TextSettings settings, Contacts contacts, Staff staff, Clock clock) {
    this.settings = settings;
    this.contacts = contacts;
    this.staff = staff;
    this.clock = clock;
    settings.signingKey().ifPresent(Signatures::new);
  }

  @Override
  public String code() {
    return CODE;
  }

  @Override
  public boolean on() {
    return settings.url().isPresent();
  }

  @Override
  public Optional<String> addressOf(String recipient) {
    return recipient.matches(UUID_FORM)
        ? contacts.phoneOf(UUID.fromString(recipient))
        : staff.phoneOf(recipient);
  }

  @Override
  public ChannelLimits limits() {
    return settings;
  }

  @Override
  public Connection open() {
    return new GatewayConnection(settings, clock);
  }

  @Override
  public String begin(UUID notice) {
    Optional<TextMessageRow> newest = TextMessageRow.newest(notice);
    if (newest.isPresent() && !newest.get().state.equals("failed")) {
      return MessageKey.of(notice, newest.get().group);
    }
    TextMessageRow row = new TextMessageRow();
    row.notice = notice;
    row.group = newest.map(before -> before.group + 1).orElse(1);
    row.state = "begun";
    row.changedAt = clock.instant();
    row.persist();
    return MessageKey.of(notice, row.group);
  }

  /** A receipt may have come before the answer: then it knows more. */
  @Override
  public boolean taken(UUID notice, Optional<String> id) {
    Optional<TextMessageRow> message = TextMessageRow.newest(notice);
    message.ifPresent(
        row -> {
          id.ifPresent(text -> row.gatewayId = text);
          if (row.state.equals("begun")) {
            row.state = "accepted";
            row.changedAt = clock.instant();
          }
        });
    return message.filter(row -> row.state.equals("failed")).isEmpty();
  }
}
