package org.tapeline.fitting.today;

import static java.util.stream.Collectors.toMap;
import static java.util.stream.Collectors.toSet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Function;
import org.tapeline.fitting.helmet.CertificationEnd;
import org.tapeline.fitting.helmet.HelmetCopy;
import org.tapeline.fitting.place.Place;
import org.tapeline.fitting.recheck.RecheckRules.Check;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.fitting.signoff.PlannedChecks;
import org.tapeline.fitting.signoff.SignOffCommand.Lapse;
import org.tapeline.fitting.signoff.SignOffRow;
import org.tapeline.fitting.signoff.SignOffs;
import org.tapeline.fitting.today.RecheckEvent.RecheckDue;
import org.tapeline.journal.Cause;
import org.tapeline.journal.DerivedId;
import org.tapeline.journal.Journal;
import org.tapeline.journal.StreamName;

/**
 * Tells when re-checks have become due and sign-offs have lapsed; in the caller's transaction. The
 * ids follow from the sign-off and the cause, and the player is locked: however many look, and
 * however often, it is told once. What the lists show does not wait for it.
 */
@ApplicationScoped
public class DueChecks {
  private final PlannedChecks planned;
  private final SignOffs signOffs;
  private final Journal journal;
  private final Clock clock;

  DueChecks(PlannedChecks planned, SignOffs signOffs, Journal journal, Clock clock) {
    this.planned = planned;
    this.signOffs = signOffs;
    this.journal = journal;
    this.clock = clock;
  }

  /** Those of the sign-offs of which something is to be told: a look without any lock. */
  List<UUID> withNews(List<SignOffRow> rows) {
    Instant now = clock.instant();
    Map<UUID, PlannedChecks.Facts> facts = planned.facts(rows);
    Set<ToldRow.Key> told =
        new HashSet<>(ToldRow.ofSessions(rows.stream().map(row -> row.session).toList()));
    Map<String, HelmetCopy> helmets =
        HelmetCopy.ofTags(rows.stream().map(row -> row.tag).collect(toSet())).stream()
            .collect(toMap(h -> h.tag, Function.identity()));
    return rows.stream()
        .filter(
            row -> {
              List<Check> due = due(row, facts, now);
              return due.stream().anyMatch(c -> !told.contains(ToldRow.key(row.session, c)))
                  || due.stream().anyMatch(c -> c.lapsed(now))
                  || certificationEnd(row, Optional.ofNullable(helmets.get(row.tag)))
                      .filter(end -> !now.isBefore(end))
                      .isPresent();
            })
        .map(row -> row.player)
        .sorted()
        .toList();
  }

  /** Players in one order, so that two who look do not wait for each other. */
  void look(Collection<UUID> players, UUID correlationId) {
    withNews(SignOffRow.liveOf(players)).forEach(p -> look(p, Optional.of(correlationId)));
  }

  /**
   * @param chain what led to it; empty when time went by
   */
  void look(UUID player, Optional<UUID> chain) {
    PlayerCopy.locked(player);
    Instant now = clock.instant();
    List<SignOffRow> rows = SignOffRow.liveOf(List.of(player));
    rows.forEach(row -> SignOffRow.getEntityManager().refresh(row));
    for (SignOffRow row : rows.stream().filter(SignOffRow::holds).toList()) {
      List<Check> due = due(row, planned.facts(rows), now);
      Set<ToldRow.Key> told = new HashSet<>(ToldRow.ofSessions(List.of(row.session)));
      due.stream()
          .filter(check -> told.add(ToldRow.key(row.session, check)))
          .forEach(check -> tell(row, check, chain));
      lapse(row, due, now, chain);
    }
  }

  private List<Check> due(SignOffRow row, Map<UUID, PlannedChecks.Facts> facts, Instant now) {
    return planned.checks(facts.get(row.player), now).stream().filter(c -> c.due(now)).toList();
  }

  private void tell(SignOffRow row, Check check, Optional<UUID> chain) {
    ToldRow.Key key = ToldRow.key(row.session, check);
    ToldRow.keep(key);
    StreamName stream = StreamName.of("recheck", row.player, row.player);
    UUID id = DerivedId.from(row.session, "recheck/" + key.rule() + "/" + key.cause());
    journal.append(
        stream,
        journal.load(stream).size(),
        List.of(
            new RecheckDue(
                row.player, row.tag, key.rule(), check.dueAt(), check.lapsesAt().orElse(null))),
        new Cause(id, chain.orElse(id), "recheck-due"));
  }

  private void lapse(SignOffRow row, List<Check> due, Instant now, Optional<UUID> chain) {
    Optional<Instant> overdue =
        due.stream()
            .filter(check -> check.lapsed(now))
            .flatMap(check -> check.lapsesAt().stream())
            .min(Instant::compareTo);
    Optional<Instant> uncertified =
        certificationEnd(row, HelmetCopy.findByIdOptional(row.tag))
            .filter(end -> !now.isBefore(end));
    Optional<Lapse> lapse =
        overdue
            .map(at -> new Lapse(row.session, "recheck-overdue", at))
            .or(() -> uncertified.map(at -> new Lapse(row.session, "out-of-certification", at)));
    UUID id = DerivedId.from(row.session, "lapse");
    lapse.ifPresent(
        command -> signOffs.handle(row.player, command, new Cause(id, chain.orElse(id), "lapse")));
  }

  /** The moment after the last certified day, where the player is fitted. */
  private static Optional<Instant> certificationEnd(SignOffRow row, Optional<HelmetCopy> helmet) {
    return helmet
        .map(h -> h.certifiedUntil)
        .map(last -> CertificationEnd.after(last, zone(row.player)));
  }

  private static ZoneId zone(UUID player) {
    PlayerCopy row = PlayerCopy.findById(player);
    return Place.zoneOf(row == null ? null : row.field);
  }
}
