package org.tapeline.inventory.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.database.Database;
import org.tapeline.inventory.helmet.HelmetFit.Kind;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/** Keeps what fitting says of fits in a helmet, so that its time line tells them. */
@ApplicationScoped
public class HelmetFits {
  private final Database database;

  HelmetFits(Database database) {
    this.database = database;
  }

  /** What is read of fitting's {@code helmet-tried}. */
  record Tried(UUID player, String tag, Instant at) {}

  /** What is read of fitting's {@code fit-failed}; without a helmet there is no tag. */
  record Failed(
      UUID player, String field, Optional<String> tag, List<String> failedChecks, Instant at) {}

  /** What is read of what ends a sign-off. */
  record Ended(UUID player, String tag, String why, Instant at) {}

  /** Passed fits and sign-offs have listeners of their own, which tell it here. */
  public void declareOn(Subscription subscription) {
    String of = "org.tapeline.fitting.";
    subscription
        .on(of + "helmet-tried.v1", Tried.class, this::tried)
        .on(of + "fit-failed.v1", Failed.class, this::failed)
        .on(of + "sign-off-withdrawn.v1", Ended.class, (d, e) -> ended(Kind.WITHDRAWN, d, e))
        .on(of + "sign-off-lapsed.v1", Ended.class, (d, e) -> ended(Kind.LAPSED, d, e));
  }

  /** What is read of fitting's {@code fit-passed}. */
  record Passed(UUID player, String field, String tag, Instant at) {}

  /** The copies alone, with those that listeners of their own tell. */
  void declareAllOn(Subscription copies) {
    declareOn(copies.events("fitting.events"));
    SignedOff.declareOn(copies, this::keep);
    copies.on("org.tapeline.fitting.fit-passed.v1", Passed.class, this::passed);
  }

  private void passed(Passed d, ReceivedEvent event) {
    Optional<String> field = Optional.of(d.field());
    keep(d.tag(), new HelmetFit(Kind.PASSED, d.player(), field, "", d.at()), event);
  }

  void keep(SignedOff d, ReceivedEvent event) {
    Optional<String> field = Optional.of(d.field());
    HelmetFit fit = new HelmetFit(Kind.SIGNED_OFF, d.player(), field, d.checkedBy(), d.at());
    keep(d.tag(), fit, event);
  }

  private void tried(Tried d, ReceivedEvent event) {
    keep(d.tag(), new HelmetFit(Kind.TRIED, d.player(), Optional.empty(), "", d.at()), event);
  }

  private void failed(Failed d, ReceivedEvent event) {
    String checks = String.join(",", d.failedChecks());
    HelmetFit fit = new HelmetFit(Kind.FAILED, d.player(), Optional.of(d.field()), checks, d.at());
    d.tag().ifPresent(tag -> keep(tag, fit, event));
  }

  private void ended(Kind kind, Ended d, ReceivedEvent event) {
    keep(d.tag(), new HelmetFit(kind, d.player(), Optional.empty(), d.why(), d.at()), event);
  }

  /** The same event twice is one. */
  public void keep(String tag, HelmetFit fit, ReceivedEvent event) {
    database.change(
        "insert into helmet_fit (event, tag, kind, player, place, why, at)"
            + " values (?, ?, ?, ?, ?, ?, ?) on conflict (event) do nothing",
        event.id(),
        tag,
        fit.kind().code(),
        fit.player(),
        fit.place().orElse(null),
        fit.why(),
        fit.at());
  }

  /** The oldest first; at one moment in the order in which a fit goes. */
  public List<HelmetFit> of(String tag) {
    return database.list(
        "select * from helmet_fit where tag = ? order by at, array_position("
            + "array['tried', 'failed', 'passed', 'signed-off', 'withdrawn', 'lapsed'], kind)",
        row ->
            new HelmetFit(
                Kind.of(row.getString("kind")),
                row.getObject("player", UUID.class),
                Optional.ofNullable(row.getString("place")),
                row.getString("why"),
                Database.instant(row, "at")),
        tag);
  }
}
