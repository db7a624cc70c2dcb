package org.tapeline.fitting.evidence;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.logging.Logger;
import org.tapeline.journal.token.SignedTokens;

/** The addresses under which printed sheets are checked. */
@ApplicationScoped
public class SheetLinks {
  private static final Logger LOG = Logger.getLogger(SheetLinks.class);
  private static final String UNSET =
      "TAPELINE_SHEET_KEY is not set: sheets that are printed now can no longer be checked when"
          + " this process ends";

  private final SheetKey key;
  private final String publicUrl;

  SheetLinks(
      @ConfigProperty(name = "tapeline.sheet.key") Optional<String> secret,
      @ConfigProperty(name = "tapeline.public-url") String publicUrl) {
    this.key = new SheetKey(SignedTokens.key(secret, () -> LOG.warn(UNSET)));
    this.publicUrl = publicUrl.replaceAll("/+$", "");
  }

  /** The absolute address at which anybody who holds the sheet can check it. */
  public String addressOf(SheetKey.Reference sheet) {
    return publicUrl + "/fitting/verify/" + key.token(sheet);
  }

  /** What a token refers to; empty for one that is not ours. */
  public Optional<SheetKey.Reference> open(String token) {
    return key.open(token);
  }
}
