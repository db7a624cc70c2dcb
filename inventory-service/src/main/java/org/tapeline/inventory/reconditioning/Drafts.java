package org.tapeline.inventory.reconditioning;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.UUID;
import org.tapeline.inventory.helmet.HelmetViews;
import org.tapeline.inventory.place.Places;
import org.tapeline.journal.quarkus.http.Problem;

/** Batches that are being put together: a list, and what of it is packed. */
@ApplicationScoped
public class Drafts {
  private static final Set<String> SENDABLE = Set.of("available", "quarantined", "held");

  private final BatchStore store;
  private final HelmetViews helmets;
  private final Places places;
  private final PolicyOnFile policy;
  private final Clock clock;

  Drafts(BatchStore store, HelmetViews helmets, Places places, PolicyOnFile policy, Clock clock) {
    this.store = store;
    this.helmets = helmets;
    this.places = places;
    this.policy = policy;
    this.clock = clock;
  }

  /** Which helmets go where. */
  public record Draft(String place, String reconditioner, List<String> tags) {
    public Draft {
      place = place == null ? "" : place.strip();
      reconditioner = reconditioner == null ? "" : reconditioner.strip();
      tags = tags == null ? List.of() : List.copyOf(new LinkedHashSet<>(tags));
    }
  }

  /**
   * Begins one.
   *
   * @throws Problem for a helmet that cannot go, or more of them than one batch may have
   */
  void begin(UUID batch, Draft draft) {
    if (!places.exists(draft.place())) {
      throw wrong("place", "Choose the place from which they go.");
    }
    if (!policy.get().reconditioners().contains(draft.reconditioner())) {
      throw wrong(
          "reconditioner",
          "Choose one of: " + String.join(", ", policy.get().reconditioners()) + ".");
    }
    int most = policy.get().mostPerBatch();
    if (draft.tags().isEmpty() || draft.tags().size() > most) {
      throw wrong("tags", "Choose 1 to " + most + " helmets for one batch.");
    }
    store.draft(batch, draft.place(), draft.reconditioner(), clock.instant());
    draft.tags().forEach(tag -> put(batch, draft.place(), tag));
  }

  /** Puts another one on the list. */
  void add(UUID batch, String tag) {
    BatchSummary summary = open(batch);
    if (summary.helmets() >= policy.get().mostPerBatch()) {
      throw wrong("tag", "The batch is full. Begin another.");
    }
    put(batch, summary.place(), tag.strip());
  }

  private void put(UUID batch, String place, String tag) {
    HelmetViews.View helmet =
        helmets
            .find(tag)
            .orElseThrow(() -> wrong("tag", "There is no helmet " + tag + ". Read it again."));
    if (!SENDABLE.contains(helmet.state()) || !helmet.place().equals(place)) {
      throw wrong(
          "tag",
          "The helmet "
              + tag
              + " is "
              + helmet.state().replace('-', ' ')
              + " at "
              + helmet.place()
              + ". Only what is on the shelf at "
              + place
              + " can go with this batch.");
    }
    if (!store.add(batch, tag)) {
      throw wrong("tag", "The helmet " + tag + " is in a batch already.");
    }
  }

  /** Ticks it off, or takes the tick back. */
  void pack(UUID batch, List<String> tags, boolean packed) {
    open(batch);
    if (tags.isEmpty()) {
      throw wrong("tag", "Scan or type a tag.");
    }
    for (String tag : tags) {
      if (!store.pack(batch, tag.strip(), packed)) {
        throw wrong(
            "tag", "The helmet " + tag + " is not on this list. Leave it here, or add it first.");
      }
    }
  }

  /** It stays here. */
  void remove(UUID batch, String tag) {
    open(batch);
    store.remove(batch, tag);
  }

  /** Nothing goes. */
  void giveUp(UUID batch) {
    open(batch);
    store.giveUp(batch);
  }

  private BatchSummary open(UUID batch) {
    BatchSummary summary = store.known(batch);
    if (!summary.state().equals("draft")) {
      throw Problem.conflict("batch-sent", "This batch has gone already and stays as it is.");
    }
    return summary;
  }

  static Problem wrong(String field, String message) {
    return Problem.badRequest(field, message, new Problem.FieldError(field, message));
  }
}
