package org.tapeline.notify.restock;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.UUID;
import org.tapeline.journal.Subscription;

/** Keeps the copies of open restock requests; always in the caller's transaction. */
@ApplicationScoped
public class RestockCopies {
  private static final String INVENTORY = "org.tapeline.inventory.";

  /** What is read of {@code restock-picked}, {@code -received} and {@code -cancelled}. */
  public record Moved(UUID request) {}

  /** What is read of {@code restock-shipped}. */
  public record Shipped(UUID request, Instant expectedAt) {}

  public Subscription declareOn(Subscription subscription) {
    return subscription
        .on(INVENTORY + "restock-picked.v1", Moved.class, (m, e) -> moved(m.request(), "picked"))
        .on(INVENTORY + "restock-shipped.v1", Shipped.class, (s, e) -> shipped(s))
        .on(INVENTORY + "restock-received.v1", Moved.class, (m, e) -> over(m.request()))
        .on(INVENTORY + "restock-cancelled.v1", Moved.class, (m, e) -> over(m.request()));
  }

  /** A request is made, or made again with another amount. */
  public void requested(RestockOpen asked) {
    RestockOpen known = RestockOpen.findById(asked.request);
    if (known == null) {
      asked.state = "requested";
      asked.persist();
      return;
    }
    known.fromPlace = asked.fromPlace;
    known.quantity = asked.quantity;
    known.expectedAt = asked.expectedAt;
  }

  private static void shipped(Shipped shipped) {
    moved(shipped.request(), "shipped");
    RestockOpen.update(
        "expectedAt = ?1 where request = ?2", shipped.expectedAt(), shipped.request());
  }

  private static void moved(UUID request, String state) {
    RestockOpen.update("state = ?1 where request = ?2", state, request);
  }

  private static void over(UUID request) {
    RestockOpen.deleteById(request);
  }
}
