package org.tapeline.sizing.growth;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Optional;

/** The reference that the service starts with. */
public final class Kiggs {
  private Kiggs() {}

  public static GrowthReference reference() {
    try {
      return new GrowthReferences().inForce(Optional.empty());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
