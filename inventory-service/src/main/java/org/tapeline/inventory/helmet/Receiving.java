package org.tapeline.inventory.helmet;

import java.time.Instant;
import java.util.List;
import java.util.UUID;

/** A delivery that is being taken in, helmet by helmet. */
public record Receiving(UUID id, Delivery delivery, Instant openedAt, String openedBy) {

  /** One that was taken in. */
  public record Taken(String tag, String how) {
    /** It had no tag, and got a fresh one that must be put on it. */
    public boolean isUntagged() {
      return how.equals("untagged");
    }

    public boolean isOrdered() {
      return how.equals("ordered");
    }
  }

  /** In the list of the last ones. */
  public record Summary(UUID id, String model, String size, String lot, String place, int count) {}

  /** The latest first; of a long list only these, with how many there are. */
  public record Progress(Receiving receiving, List<Taken> latest, int count) {
    public boolean isLabelled() {
      return latest.stream().noneMatch(Taken::isUntagged);
    }
  }
}
