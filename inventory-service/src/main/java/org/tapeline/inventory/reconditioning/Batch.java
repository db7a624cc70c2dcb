package org.tapeline.inventory.reconditioning;

import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import org.tapeline.inventory.reconditioning.BatchEvent.BatchClosed;
import org.tapeline.inventory.reconditioning.BatchEvent.BatchReceivedBack;
import org.tapeline.inventory.reconditioning.BatchEvent.BatchSent;
import org.tapeline.inventory.reconditioning.BatchEvent.Result;

/**
 * A batch as its events tell. Before it is sent it is a list on paper, without events.
 *
 * @param out the helmets that went and of which nothing is known yet
 */
public record Batch(UUID id, State state, List<String> out, long costCents) {

  /** How far it has come. */
  public enum State {
    DRAFT,
    SENT,
    CLOSED
  }

  static Batch draft(UUID id) {
    return new Batch(id, State.DRAFT, List.of(), 0);
  }

  static Batch evolve(Batch batch, BatchEvent event) {
    return switch (event) {
      case BatchSent e -> new Batch(e.batch(), State.SENT, e.helmets(), 0);
      case BatchReceivedBack e -> batch.without(e.helmets());
      case BatchClosed e -> new Batch(batch.id, State.CLOSED, batch.out, batch.costCents);
    };
  }

  static Batch of(UUID id, List<BatchEvent> events) {
    Batch batch = draft(id);
    for (BatchEvent event : events) {
      batch = evolve(batch, event);
    }
    return batch;
  }

  private Batch without(List<Result> results) {
    List<String> left = new ArrayList<>(out);
    results.forEach(r -> left.remove(r.tag()));
    long cost = costCents + results.stream().mapToLong(Result::costCents).sum();
    return new Batch(id, state, List.copyOf(left), cost);
  }
}
