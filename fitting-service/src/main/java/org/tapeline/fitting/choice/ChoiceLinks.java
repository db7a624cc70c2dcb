package org.tapeline.fitting.choice;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.tapeline.journal.token.SignedTokens;
import org.tapeline.journal.token.SlotLinks;

/** Opens the links that notify puts on its pages: both services have the same key. */
@ApplicationScoped
class ChoiceLinks {
  private static final Logger LOG = Logger.getLogger(ChoiceLinks.class);
  private static final String UNSET =
      "TAPELINE_LINK_KEY is not set: no link by which a guardian chooses a slot works here";

  private final SlotLinks links;
  private final Clock clock;

  ChoiceLinks(@ConfigProperty(name = "tapeline.link.key") Optional<String> secret, Clock clock) {
    this.links = new SlotLinks(SignedTokens.key(secret, () -> LOG.warn(UNSET)));
    this.clock = clock;
  }

  Optional<SlotLinks.Slot> open(String token) {
    return links.open(token, clock.instant());
  }
}
