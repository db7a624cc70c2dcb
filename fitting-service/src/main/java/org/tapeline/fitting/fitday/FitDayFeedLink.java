package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.tapeline.fitting.fitday.FeedKey.Scope;
import org.tapeline.journal.quarkus.access.Caller;
import org.tapeline.journal.token.SignedTokens;

/** The address at which a calendar program finds the fit days of somebody's fields. */
@ApplicationScoped
public class FitDayFeedLink {
  private static final Logger LOG = Logger.getLogger(FitDayFeedLink.class);
  private static final String UNSET =
      "TAPELINE_LINK_KEY is not set: calendars that subscribe now find nothing any more when this"
          + " process ends";

  private final FeedKey key;
  private final String publicUrl;
  private final Caller caller;

  FitDayFeedLink(
      @ConfigProperty(name = "tapeline.link.key") Optional<String> secret,
      @ConfigProperty(name = "tapeline.public-url") String publicUrl,
      Caller caller) {
    this.key = new FeedKey(SignedTokens.key(secret, () -> LOG.warn(UNSET)));
    this.publicUrl = publicUrl.replaceAll("/+$", "");
    this.caller = caller;
  }

  /** The absolute address for whoever asks: of the own fields, of all for the manager. */
  public String address() {
    Scope scope = caller.isManager() ? Scope.ALL_FIELDS : new Scope(false, caller.fields());
    return publicUrl + "/fitting/calendar/" + key.token(scope) + "/fit-days.ics";
  }

  Optional<Scope> open(String token) {
    return key.open(token);
  }
}
