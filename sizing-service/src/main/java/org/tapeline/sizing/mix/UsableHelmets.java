package org.tapeline.sizing.mix;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.persistence.Tuple;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.tapeline.journal.Subscription;

/**
 * How many usable helmets of each size there are, as inventory tells. One that is sent out to the
 * reconditioner counts: it will be back.
 */
@ApplicationScoped
public class UsableHelmets {
  private static final String OF = "org.tapeline.inventory.";

  private final EntityManager entities;

  UsableHelmets(EntityManager entities) {
    this.entities = entities;
  }

  /** A helmet came. */
  public record Received(String tag, String model, String size) {}

  /** A helmet went out of use, for a time or for ever. */
  public record Out(String tag) {}

  /** It is back: from a hold, or from the reconditioner. */
  public record Freed(String tag, String state) {}

  /** A helmet was looked at; it may be on hold still. */
  public record Inspected(String tag, String outcome, Optional<String> state) {
    boolean usable() {
      return outcome.equals("back-to-stock") && state.orElse("available").equals("available");
    }
  }

  public Subscription declareOn(Subscription subscription) {
    return subscription
        .events("inventory.events")
        .on(OF + "helmet-received.v1", Received.class, (received, event) -> keep(received))
        .on(OF + "helmet-quarantined.v1", Out.class, (out, event) -> usable(out.tag(), false))
        .on(OF + "helmet-retired.v1", Out.class, (out, event) -> usable(out.tag(), false))
        .on(
            OF + "helmet-inspected.v1",
            Inspected.class,
            (inspected, event) -> usable(inspected.tag(), inspected.usable()))
        .on(OF + "helmet-held.v1", Out.class, (out, event) -> usable(out.tag(), false))
        .on(
            OF + "helmet-freed.v1",
            Freed.class,
            (freed, event) -> usable(freed.tag(), freed.state().equals("available")))
        .on(
            OF + "helmet-came-back.v1",
            Freed.class,
            (back, event) -> usable(back.tag(), back.state().equals("available")))
        .ignoring(
            OF + "batch-closed.v1",
            OF + "batch-received-back.v1",
            OF + "batch-sent.v1",
            OF + "damage-reported.v1",
            OF + "helmet-issued.v1",
            OF + "helmet-moved.v1",
            OF + "helmet-ordered.v1",
            OF + "helmet-put-aside.v1",
            OF + "hold-lifted.v1",
            OF + "hold-placed.v1",
            OF + "helmet-recertified.v1",
            OF + "helmet-sent-out.v1",
            OF + "helmet-returned.v1",
            OF + "issue-refused.v1",
            OF + "part-moved.v1",
            OF + "part-used.v1",
            OF + "plan-committed.v1",
            OF + "plan-released.v1",
            OF + "place-listed.v1",
            OF + "replacement-missing.v1",
            OF + "replacement-reserved.v1",
            OF + "reservation-released.v1",
            OF + "restock-cancelled.v1",
            OF + "restock-picked.v1",
            OF + "restock-received.v1",
            OF + "restock-requested.v1",
            OF + "restock-shipped.v1",
            OF + "stock-counted.v1");
  }

  private void keep(Received helmet) {
    entities
        .createNativeQuery(
            "insert into usable_helmet values (?1, ?2, ?3, true)"
                + " on conflict (tag) do update set model = ?2, size = ?3")
        .setParameter(1, helmet.tag())
        .setParameter(2, helmet.model())
        .setParameter(3, helmet.size())
        .executeUpdate();
  }

  private void usable(String tag, boolean usable) {
    entities
        .createNativeQuery(
            "insert into usable_helmet values (?1, null, null, ?2)"
                + " on conflict (tag) do update set usable = ?2")
        .setParameter(1, tag)
        .setParameter(2, usable)
        .executeUpdate();
  }

  /** By size, of a model. */
  Map<String, Integer> of(String model) {
    @SuppressWarnings("unchecked")
    List<Tuple> rows =
        entities
            .createNativeQuery(
                "select size, count(*) as there from usable_helmet"
                    + " where usable and model = ?1 group by size",
                Tuple.class)
            .setParameter(1, model)
            .getResultList();
    Map<String, Integer> there = new HashMap<>();
    rows.forEach(
        r -> there.put(r.get("size", String.class), r.get("there", Long.class).intValue()));
    return there;
  }
}
