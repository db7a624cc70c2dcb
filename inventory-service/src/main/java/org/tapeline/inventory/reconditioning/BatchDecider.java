package org.tapeline.inventory.reconditioning;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.tapeline.inventory.reconditioning.Batch.State;
import org.tapeline.inventory.reconditioning.BatchCommand.Close;
import org.tapeline.inventory.reconditioning.BatchCommand.Receive;
import org.tapeline.inventory.reconditioning.BatchCommand.Send;
import org.tapeline.inventory.reconditioning.BatchEvent.BatchClosed;
import org.tapeline.inventory.reconditioning.BatchEvent.BatchReceivedBack;
import org.tapeline.inventory.reconditioning.BatchEvent.BatchSent;
import org.tapeline.inventory.reconditioning.BatchEvent.Result;

/** Decides what may happen to a batch. */
public final class BatchDecider {
  private BatchDecider() {}

  /** What follows: an event, or a refusal with a code and what to do. */
  public sealed interface Decision {

    /** It happened. */
    record Accepted(BatchEvent event) implements Decision {}

    /** It did not. */
    record Refused(String code, String sentence) implements Decision {}
  }

  static Decision decide(Batch batch, BatchCommand command) {
    return switch (command) {
      case Send c -> send(batch, c);
      case Receive c -> receive(batch, c);
      case Close c -> close(batch, c);
    };
  }

  private static Decision send(Batch batch, Send c) {
    if (batch.state() != State.DRAFT) {
      return new Decision.Refused("batch-sent", "This batch has gone already.");
    }
    if (c.helmets().isEmpty()) {
      return new Decision.Refused("batch-empty", "Nothing is packed yet. Tick the helmets off.");
    }
    return new Decision.Accepted(
        new BatchSent(batch.id(), c.place(), c.reconditioner(), c.helmets(), c.backBy(), c.at()));
  }

  /** A helmet that was missing when the batch was closed may still turn up. */
  private static Decision receive(Batch batch, Receive c) {
    List<String> tags = c.results().stream().map(Result::tag).toList();
    Set<String> each = new HashSet<>(tags);
    if (batch.state() == State.DRAFT) {
      return new Decision.Refused("batch-not-sent", "This batch has not gone yet.");
    }
    if (tags.isEmpty() || each.size() < tags.size()) {
      return new Decision.Refused("no-helmets", "Name the helmets that came, each once.");
    }
    return tags.stream()
        .filter(tag -> !batch.out().contains(tag))
        .findFirst()
        .<Decision>map(
            tag ->
                new Decision.Refused(
                    "not-out",
                    "The helmet " + tag + " is not out with this batch. Read the tag again."))
        .orElseGet(
            () ->
                new Decision.Accepted(
                    new BatchReceivedBack(batch.id(), c.place(), c.results(), c.at())));
  }

  private static Decision close(Batch batch, Close c) {
    return switch (batch.state()) {
      case DRAFT ->
          new Decision.Refused(
              "batch-not-sent", "This batch has not gone yet. Give it up instead.");
      case CLOSED -> new Decision.Refused("batch-closed", "This batch is closed already.");
      case SENT ->
          new Decision.Accepted(
              new BatchClosed(batch.id(), batch.out(), batch.costCents(), c.currency(), c.at()));
    };
  }
}
