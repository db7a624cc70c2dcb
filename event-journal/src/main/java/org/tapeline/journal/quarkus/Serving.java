package org.tapeline.journal.quarkus;

import jakarta.inject.Singleton;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * Whether this process serves. One that was started for a rebuild does not: what works by itself
 * (senders, holds, what looks at the clock) is left to the copies that do.
 */
@Singleton
public class Serving {
  private final Optional<List<String>> rebuild;

  /**
   * @param rebuild the read models to rebuild instead; {@code all} for all
   */
  public Serving(@ConfigProperty(name = "tapeline.rebuild") Optional<List<String>> rebuild) {
    this.rebuild = rebuild;
  }

  public boolean here() {
    return rebuild.isEmpty();
  }

  /** What this process is to rebuild. */
  Optional<List<String>> toRebuild() {
    return rebuild;
  }
}
