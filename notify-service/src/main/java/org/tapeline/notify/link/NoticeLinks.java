package org.tapeline.notify.link;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.ByteBuffer;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.tapeline.journal.token.SignedTokens;
import org.tapeline.journal.token.SlotLinks;
import org.tapeline.journal.token.TimedTokens;

/** The addresses of parents' pages. */
@ApplicationScoped
public class NoticeLinks {
  private static final Logger LOG = Logger.getLogger(NoticeLinks.class);
  private static final String UNSET =
      "TAPELINE_LINK_KEY is not set: links in mails sent now stop working when this process ends";

  private static final String GUARDIAN = "[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}";

  private final TimedTokens pages;
  private final SlotLinks slots;
  private final SignedTokens turnOffs;
  private final SignedTokens contacts;
  private final Duration validFor;
  private final Duration slotValidFor;
  private final String publicUrl;
  private final Clock clock;

  NoticeLinks(
      @ConfigProperty(name = "tapeline.link.key") Optional<String> secret,
      @ConfigProperty(name = "tapeline.link.valid-for") Duration validFor,
      @ConfigProperty(name = "tapeline.link.slot-valid-for") Duration slotValidFor,
      @ConfigProperty(name = "tapeline.public-url") String publicUrl,
      Clock clock) {
    byte[] bytes = SignedTokens.key(secret, () -> LOG.warn(UNSET));
    this.pages = new TimedTokens(bytes, "tapeline notice page");
    this.slots = new SlotLinks(bytes);
    this.turnOffs = new SignedTokens(bytes, "tapeline turn off news");
    this.contacts = new SignedTokens(bytes, "tapeline contact page");
    this.validFor = validFor;
    this.slotValidFor = slotValidFor;
    this.publicUrl = publicUrl.replaceAll("/+$", "");
    this.clock = clock;
  }

  /** The absolute address of a notice's page, good from now on for {@link #validFor}. */
  public String addressOf(UUID notice, Instant now) {
    return publicUrl + "/notify/n/" + pages.seal(bytes(notice), now.plus(validFor));
  }

  /** The absolute address of a page of Tapeline, behind the log-in. */
  public String addressOf(String path) {
    return publicUrl + path;
  }

  /**
   * The path on which a guardian chooses another slot: a page of fitting's, for one case alone. It
   * ends soon, for every look at the notice's page makes another one.
   *
   * @param slotEnds when the slot that the case has ends; the link ends with it
   */
  public String slotPath(SlotLinks.Slot slot, Optional<Instant> slotEnds) {
    Instant now = clock.instant();
    Instant latest = now.plus(slotValidFor);
    Instant until = slotEnds.filter(now::isBefore).filter(latest::isAfter).orElse(latest);
    return "/fitting/slot/" + slots.seal(slot, until);
  }

  /**
   * A turn-off link in words: who turns news off, and which notice's link was used.
   *
   * @param recipient a guardian's id
   */
  public record TurnOff(UUID recipient, UUID notice) {}

  /**
   * The absolute address where a guardian turns news off that is not about safety. It has no end,
   * since a mail may be years old when somebody has had enough. Empty for what cannot be turned off
   * and for staff, whose addresses are set by the association.
   */
  public Optional<String> turnOff(boolean allowed, String recipient, UUID notice) {
    if (!allowed || !recipient.matches(GUARDIAN)) {
      return Optional.empty();
    }
    UUID guardian = UUID.fromString(recipient);
    byte[] content =
        ByteBuffer.allocate(2 * 16)
            .putLong(guardian.getMostSignificantBits())
            .putLong(guardian.getLeastSignificantBits())
            .putLong(notice.getMostSignificantBits())
            .putLong(notice.getLeastSignificantBits())
            .array();
    return Optional.of(publicUrl + "/notify/unsubscribe/" + turnOffs.seal(content));
  }

  /** What a token of {@link #turnOff} says. */
  public Optional<TurnOff> openTurnOff(String token) {
    return turnOffs
        .open(token)
        .filter(content -> content.length == 2 * 16)
        .map(ByteBuffer::wrap)
        .map(
            read ->
                new TurnOff(
                    new UUID(read.getLong(), read.getLong()),
                    new UUID(read.getLong(), read.getLong())));
  }

  /**
   * The absolute address where a guardian says how and when to be written to, good from now on for
   * {@link #validFor}. Empty for staff.
   */
  public Optional<String> contact(String recipient, UUID notice) {
    if (!recipient.matches(GUARDIAN)) {
      return Optional.empty();
    }
    UUID guardian = UUID.fromString(recipient);
    byte[] content =
        ByteBuffer.allocate(2 * 16 + 8)
            .putLong(guardian.getMostSignificantBits())
            .putLong(guardian.getLeastSignificantBits())
            .putLong(notice.getMostSignificantBits())
            .putLong(notice.getLeastSignificantBits())
            .putLong(clock.instant().plus(validFor).getEpochSecond())
            .array();
    return Optional.of(publicUrl + "/notify/c/" + contacts.seal(content));
  }

  /** Whose contact page a token of {@link #contact} opens now, and in which notice it stood. */
  public Optional<TurnOff> openContact(String token) {
    return contacts
        .open(token)
        .filter(content -> content.length == 2 * 16 + 8)
        .map(ByteBuffer::wrap)
        .filter(read -> clock.instant().getEpochSecond() < read.getLong(2 * 16))
        .map(
            read ->
                new TurnOff(
                    new UUID(read.getLong(), read.getLong()),
                    new UUID(read.getLong(), read.getLong())));
  }

  public Duration validFor() {
    return validFor;
  }

  /** The notice that a token opens now. */
  public Optional<UUID> open(String token) {
    return pages
        .open(token, clock.instant())
        .filter(content -> content.length == 16)
        .map(ByteBuffer::wrap)
        .map(read -> new UUID(read.getLong(), read.getLong()));
  }

  private static byte[] bytes(UUID id) {
    return ByteBuffer.allocate(16)
        .putLong(id.getMostSignificantBits())
        .putLong(id.getLeastSignificantBits())
        .array();
  }
}
