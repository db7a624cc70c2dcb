package org.tapeline.sizing.remeasure;

import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.EntityManager;
import jakarta.transaction.Transactional;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.LocalDate;
import java.util.List;
import java.util.UUID;
import org.tapeline.journal.Cause;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;
import org.tapeline.sizing.remeasure.Heads.Grown;

/** Asks for a new measurement, once for each head, on the day on which it is due. */
@ApplicationScoped
public class WhenHeadGrowsOldThenAskAgain {
  private static final int OLD_DAYS = 365;

  private final Heads heads;
  private final Journal journal;
  private final EntityManager entities;
  private final Clock clock;

  WhenHeadGrowsOldThenAskAgain(Heads heads, Journal journal, EntityManager entities, Clock clock) {
    this.heads = heads;
    this.journal = journal;
    this.entities = entities;
    this.clock = clock;
  }

  @Scheduled(
      every = "{tapeline.remeasure-every}",
      concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  @Transactional
  void askAgain() {
    LocalDate today = LocalDate.now(clock);
    heads.all().stream()
        .filter(head -> !head.outgrowth().remeasureOn().isAfter(today))
        .filter(this::firstTime)
        .forEach(head -> ask(head, today));
  }

  /** False when it was asked for this head before, also by another copy of this service. */
  private boolean firstTime(Grown head) {
    return entities
            .createNativeQuery(
                "insert into remeasure_asked values (?1, ?2) on conflict (player) do update"
                    + " set head_version = ?2 where remeasure_asked.head_version < ?2")
            .setParameter(1, head.player())
            .setParameter(2, head.version())
            .executeUpdate()
        == 1;
  }

  private void ask(Grown head, LocalDate today) {
    StreamName stream = StreamName.of("remeasure", head.player(), head.player());
    String why = head.measuredOn().plusDays(OLD_DAYS).isAfter(today) ? "outgrowing" : "old";
    double chance = Math.round(head.outgrowth().chance() * 100) / 100.0;
    // The cause is the calendar: its id follows from the head, so that asking twice is asking once.
    UUID id =
        UUID.nameUUIDFromBytes(
            ("remeasure/" + head.player() + "/" + head.version()).getBytes(StandardCharsets.UTF_8));
    journal.append(
        stream,
        journal.load(stream).size(),
        List.of(new RemeasureDue(head.player(), head.measuredOn(), why, chance, clock.instant())),
        Cause.command(id));
  }
}
