package org.tapeline.fitting.fitday;

import jakarta.enterprise.context.ApplicationScoped;
import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.tapeline.fitting.fitday.FeedKey.Scope;
import org.tapeline.journal.quarkus.access.Caller;

/** The address at which a calendar program finds the fit days of somebody's fields. */
@ApplicationScoped
public class FitDayFeedLink {
  private static final Logger LOG = Logger.getLogger(FitDayFeedLink.class);

  private final FeedKey key;
  private final String publicUrl;
  private final Caller caller;

  FitDayFeedLink(
      @ConfigProperty(name = "tapeline.link.key") Optional<String> secret,
      @ConfigProperty(name = "tapeline.public-url") String publicUrl,
      Caller caller) {
    this.key =
        new FeedKey(
            secret
                .map(text -> text.getBytes(StandardCharsets.UTF_8))
                .orElseGet(FitDayFeedLink::madeAtStart));
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

  private static byte[] madeAtStart() {
    LOG.warn(
        "TAPELINE_LINK_KEY is not set: calendars that subscribe now find nothing any more when"
            + " this process ends");
    byte[] made = new byte[FeedKey.LEAST_BYTES];
    new SecureRandom().nextBytes(made);
    return made;
  }
}
