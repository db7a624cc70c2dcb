package org.tapeline.notify.link;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.tapeline.journal.token.SignedTokens;

/** The addresses of parents' pages. */
@ApplicationScoped
public class NoticeLinks {
  private static final Logger LOG = Logger.getLogger(NoticeLinks.class);
  private static final String UNSET =
      "TAPELINE_LINK_KEY is not set: links in mails sent now stop working when this process ends";

  private final LinkKey key;
  private final Duration validFor;
  private final String publicUrl;
  private final Clock clock;

  NoticeLinks(
      @ConfigProperty(name = "tapeline.link.key") Optional<String> secret,
      @ConfigProperty(name = "tapeline.link.valid-for") Duration validFor,
      @ConfigProperty(name = "tapeline.public-url") String publicUrl,
      Clock clock) {
    this.key = new LinkKey(SignedTokens.key(secret, () -> LOG.warn(UNSET)));
    this.validFor = validFor;
    this.publicUrl = publicUrl.replaceAll("/+$", "");
    this.clock = clock;
  }

  /** The absolute address of a notice's page, good from now on for {@link #validFor}. */
  public String addressOf(UUID notice, Instant now) {
    return publicUrl + "/notify/n/" + key.token(notice, now.plus(validFor));
  }

  /** The absolute address of a page of Tapeline, behind the log-in. */
  public String addressOf(String path) {
    return publicUrl + path;
  }

  public Duration validFor() {
    return validFor;
  }

  /** The notice that a token opens now. */
  public Optional<UUID> open(String token) {
    return key.open(token, clock.instant());
  }
}
