package org.tapeline.inventory.reconditioning;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.helmet.Helmet;
import org.tapeline.inventory.helmet.HelmetCommand;
import org.tapeline.inventory.helmet.HelmetDesk;
import org.tapeline.inventory.helmet.HelmetEvent;
import org.tapeline.inventory.reconditioning.BatchDecider.Decision.Accepted;
import org.tapeline.inventory.reconditioning.BatchDecider.Decision.Refused;
import org.tapeline.inventory.reconditioning.BatchEvent.Result;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;
import org.tapeline.journal.quarkus.http.Problem;

/** Sends batches and takes them back: the batch and its helmets in one transaction. */
@ApplicationScoped
public class BatchDesk {
  private final Journal journal;
  private final BatchStore store;
  private final HelmetDesk helmets;
  private final DueList due;
  private final PolicyOnFile policy;
  private final Clock clock;

  BatchDesk(
      Journal journal,
      BatchStore store,
      HelmetDesk helmets,
      DueList due,
      PolicyOnFile policy,
      Clock clock) {
    this.journal = journal;
    this.store = store;
    this.helmets = helmets;
    this.due = due;
    this.policy = policy;
    this.clock = clock;
  }

  /** What is packed goes; the rest stays here. */
  void send(UUID batch, Cause cause) {
    BatchSummary draft = store.known(batch);
    LocalDate today = due.today();
    LocalDate backBy = policy.get().backOn(today);
    Instant now = clock.instant();
    List<String> packed =
        store.lines(batch).stream().filter(BatchLine::packed).map(BatchLine::tag).toList();
    run(
        batch,
        new BatchCommand.Send(draft.place(), draft.reconditioner(), packed, backBy, now),
        cause);
    store.sent(batch, today, backBy);
    packed.forEach(
        tag -> helmets.run(tag, new HelmetCommand.SendOut(batch, now), cause.step("out-" + tag)));
  }

  /**
   * How some came back.
   *
   * @param certifiedUntil on their new labels; only for what is certified again
   */
  record Came(
      List<String> tags,
      Outcome outcome,
      Optional<LocalDate> certifiedUntil,
      long costCents,
      String place,
      String by) {}

  void receive(UUID batch, Came came, Cause cause) {
    String currency = policy.get().currency();
    List<Result> results =
        came.tags().stream()
            .map(tag -> new Result(tag, came.outcome().code(), came.costCents(), currency))
            .toList();
    run(batch, new BatchCommand.Receive(came.place(), results, clock.instant()), cause);
    LocalDate today = due.today();
    for (Result result : results) {
      store.back(batch, result, came.certifiedUntil(), today);
      takeBack(result.tag(), came, cause);
    }
  }

  private void takeBack(String tag, Came came, Cause cause) {
    Instant now = clock.instant();
    switch (came.outcome()) {
      case RECERTIFIED ->
          helmets.run(
              tag,
              new HelmetCommand.ComeBack(came.certifiedUntil(), came.place(), came.by(), now),
              cause.step("back-" + tag));
      case REJECTED ->
          helmets.run(
              tag, new HelmetCommand.Retire("reconditioner", now), cause.step("reject-" + tag));
      case LOST ->
          helmets.run(tag, new HelmetCommand.Retire("lost", now), cause.step("lost-" + tag));
      case AS_IT_WENT -> asItWent(tag, came, now, cause);
    }
  }

  /** What went out of quarantine and was not mended goes back into quarantine. */
  private void asItWent(String tag, Came came, Instant now, Cause cause) {
    boolean quarantined = wentFromQuarantine(tag);
    helmets.run(
        tag,
        new HelmetCommand.ComeBack(Optional.empty(), came.place(), came.by(), now),
        cause.step("back-" + tag));
    if (quarantined) {
      helmets.run(tag, new HelmetCommand.SetAside(now), cause.step("aside-" + tag));
    }
  }

  private boolean wentFromQuarantine(String tag) {
    List<HelmetEvent> before = new ArrayList<>();
    Helmet.State went = Helmet.State.UNKNOWN;
    for (var recorded : helmets.life(tag)) {
      HelmetEvent event = (HelmetEvent) recorded.data();
      if (event instanceof HelmetEvent.HelmetSentOut) {
        went = Helmet.of(tag, before).state();
      }
      before.add(event);
    }
    return went == Helmet.State.QUARANTINED;
  }

  void close(UUID batch, Cause cause) {
    run(batch, new BatchCommand.Close(policy.get().currency(), clock.instant()), cause);
    store.closed(batch);
  }

  private void run(UUID id, BatchCommand command, Cause cause) {
    store.known(id);
    StreamName stream = StreamName.of("reconditioning", id, id);
    List<BatchEvent> events =
        journal.load(stream).stream().map(e -> (BatchEvent) e.data()).toList();
    switch (BatchDecider.decide(Batch.of(id, events), command)) {
      case Refused refused -> throw Problem.conflict(refused.code(), refused.sentence());
      case Accepted accepted ->
          journal.append(stream, events.size(), List.of((Record) accepted.event()), cause);
    }
  }

  /** Those of whom nothing is known yet, as the batch's events tell. */
  List<String> out(UUID batch) {
    return store.lines(batch).stream().filter(BatchLine::isOut).map(BatchLine::tag).toList();
  }
}
