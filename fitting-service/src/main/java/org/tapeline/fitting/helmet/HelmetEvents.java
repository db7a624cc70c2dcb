package org.tapeline.fitting.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Consumer;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/** Copies what inventory says of helmets, and says when one must not be worn any more. */
@ApplicationScoped
public class HelmetEvents {
  private final PulledHelmet pulled;
  private final DamageSeen damage;
  private final HoldHelmets holds;

  HelmetEvents(PulledHelmet pulled, DamageSeen damage, HoldHelmets holds) {
    this.pulled = pulled;
    this.damage = damage;
    this.holds = holds;
  }

  record HelmetReceived(
      String tag,
      String model,
      String size,
      String lot,
      LocalDate manufacturedOn,
      Optional<LocalDate> certifiedUntil,
      String place) {}

  record HelmetIssued(String tag, UUID player, String place) {}

  record HelmetReturned(String tag, String place, Instant at) {}

  record HelmetMoved(String tag, String to) {}

  record HelmetQuarantined(String tag, String why, Optional<UUID> player, String place) {}

  record DamageReported(String tag, String severity, Instant at) {}

  record HelmetInspected(String tag, String outcome, Optional<String> state) {}

  record HelmetHeld(String tag, UUID hold, Optional<UUID> player, String place, String state) {}

  /** Of a hold, or back from the reconditioner. */
  record HelmetBack(String tag, String place, String state) {}

  record HelmetSentOut(String tag) {}

  record HelmetRecertified(String tag, LocalDate certifiedUntil) {}

  record HelmetRetired(String tag) {}

  public void declareOn(Subscription on) {
    String of = "org.tapeline.inventory.";
    on.events("inventory.events")
        .on(of + "helmet-received.v1", HelmetReceived.class, (d, e) -> received(d))
        .on(of + "helmet-issued.v1", HelmetIssued.class, (d, e) -> issued(d))
        .on(of + "helmet-returned.v1", HelmetReturned.class, (d, e) -> returned(d))
        .on(of + "helmet-moved.v1", HelmetMoved.class, (d, e) -> moved(d))
        .on(of + "helmet-quarantined.v1", HelmetQuarantined.class, this::quarantined)
        .on(of + "damage-reported.v1", DamageReported.class, this::damaged)
        .on(of + "helmet-inspected.v1", HelmetInspected.class, (d, e) -> inspected(d))
        .on(of + "helmet-held.v1", HelmetHeld.class, this::held)
        .on(of + "helmet-freed.v1", HelmetBack.class, (d, e) -> back(d))
        .on(of + "helmet-came-back.v1", HelmetBack.class, (d, e) -> back(d))
        .on(of + "helmet-sent-out.v1", HelmetSentOut.class, (d, e) -> sentOut(d))
        .on(of + "helmet-recertified.v1", HelmetRecertified.class, (d, e) -> recertified(d))
        .on(of + "helmet-retired.v1", HelmetRetired.class, this::retired);
  }

  private static void received(HelmetReceived d) {
    HelmetCopy row = HelmetCopy.findById(d.tag());
    if (row == null) {
      row = new HelmetCopy();
      row.tag = d.tag();
    }
    row.model = d.model();
    row.size = d.size();
    row.lot = d.lot();
    row.madeOn = d.manufacturedOn();
    row.place = d.place();
    row.certifiedUntil = d.certifiedUntil().orElse(null);
    row.state = "available";
    row.holder = null;
    row.persistAndFlush();
  }

  private static void issued(HelmetIssued d) {
    change(
        d.tag(),
        row -> {
          row.state = "issued";
          row.holder = d.player();
          row.place = d.place();
        });
  }

  private static void returned(HelmetReturned d) {
    change(
        d.tag(),
        row -> {
          row.state = "available";
          row.holder = null;
          row.place = d.place();
          row.returnedAt = d.at();
        });
  }

  private static void moved(HelmetMoved d) {
    change(d.tag(), row -> row.place = d.to());
  }

  private void quarantined(HelmetQuarantined d, ReceivedEvent event) {
    HelmetCopy helmet =
        change(
            d.tag(),
            row -> {
              row.state = "quarantined";
              row.holder = null;
              row.place = d.place();
            });
    pulled.pulled(helmet, why(d.why()), d.player(), event);
  }

  /** A code that is not known here is taken for the graver one. */
  private static String why(String code) {
    return switch (code) {
      case "hold", "inspection" -> code;
      default -> "damage";
    };
  }

  /** Structural damage is heard of again as a quarantine. */
  private void damaged(DamageReported d, ReceivedEvent event) {
    if (d.severity().equals("cosmetic")) {
      HelmetCopy row = known(d.tag());
      if (row.cosmeticDamageAt == null || d.at().isAfter(row.cosmeticDamageAt)) {
        row.cosmeticDamageAt = d.at();
        row.persistAndFlush();
      }
      damage.cosmetic(d.tag(), event);
    }
  }

  private static void inspected(HelmetInspected d) {
    if (d.outcome().equals("back-to-stock")) {
      change(
          d.tag(),
          row -> {
            row.state = d.state().orElse("available");
            row.holder = null;
          });
    }
  }

  private void held(HelmetHeld d, ReceivedEvent event) {
    HelmetCopy helmet =
        change(
            d.tag(),
            row -> {
              row.state = d.state();
              row.holder = null;
              row.place = d.place();
            });
    holds.settled(d.hold(), List.of(d.tag()));
    pulled.pulled(helmet, "hold", d.player(), event);
  }

  private static void back(HelmetBack d) {
    change(
        d.tag(),
        row -> {
          row.state = d.state();
          row.place = d.place();
        });
  }

  private static void sentOut(HelmetSentOut d) {
    change(
        d.tag(),
        row -> {
          row.state = "at-reconditioner";
          row.holder = null;
        });
  }

  private static void recertified(HelmetRecertified d) {
    change(d.tag(), row -> row.certifiedUntil = d.certifiedUntil());
  }

  private void retired(HelmetRetired d, ReceivedEvent event) {
    Optional<UUID> holder = Optional.ofNullable(known(d.tag()).holder);
    HelmetCopy helmet =
        change(
            d.tag(),
            row -> {
              row.state = "retired";
              row.holder = null;
            });
    pulled.pulled(helmet, "retired", holder, event);
  }

  /** Written at once, for the lock on the row: see {@link HelmetCopy#locked}. */
  private static HelmetCopy change(String tag, Consumer<HelmetCopy> change) {
    HelmetCopy row = known(tag);
    change.accept(row);
    row.persistAndFlush();
    return row;
  }

  /** A helmet's stream begins with its receipt; one that does not is parked and shown. */
  private static HelmetCopy known(String tag) {
    return HelmetCopy.locked(tag)
        .orElseThrow(() -> new IllegalStateException("Helmet " + tag + " was never received"));
  }
}
