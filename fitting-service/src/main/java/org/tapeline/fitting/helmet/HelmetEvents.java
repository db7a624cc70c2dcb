package org.tapeline.fitting.helmet;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.UUID;
import org.tapeline.journal.ReceivedEvent;
import org.tapeline.journal.Subscription;

/** Copies what inventory says of helmets, and pulls those that must not be worn. */
@ApplicationScoped
public class HelmetEvents {
  private final PulledHelmet withdraw;

  HelmetEvents(PulledHelmet withdraw) {
    this.withdraw = withdraw;
  }

  record HelmetReceived(String tag, String model, String size, String place) {}

  record HelmetIssued(String tag, UUID player, String place) {}

  record HelmetReturned(String tag, String place) {}

  record HelmetMoved(String tag, String to) {}

  record HelmetQuarantined(String tag, String why, String place) {}

  record HelmetInspected(String tag, String outcome) {}

  record HelmetRetired(String tag) {}

  record IssueRefused(String tag, UUID player, UUID session) {}

  public void declareOn(Subscription on) {
    String of = "org.tapeline.inventory.";
    on.events("inventory.events")
        .on(of + "helmet-received.v1", HelmetReceived.class, (d, e) -> received(d))
        .on(of + "helmet-issued.v1", HelmetIssued.class, (d, e) -> issued(d))
        .on(of + "helmet-returned.v1", HelmetReturned.class, (d, e) -> returned(d))
        .on(of + "helmet-moved.v1", HelmetMoved.class, (d, e) -> moved(d))
        .on(of + "helmet-quarantined.v1", HelmetQuarantined.class, this::quarantined)
        .on(of + "helmet-inspected.v1", HelmetInspected.class, (d, e) -> inspected(d))
        .on(of + "helmet-retired.v1", HelmetRetired.class, this::retired)
        .on(
            of + "issue-refused.v1",
            IssueRefused.class,
            (d, e) -> withdraw.issueRefused(d.player(), d.session(), d.tag(), e));
  }

  private static void received(HelmetReceived d) {
    HelmetCopy row = HelmetCopy.of(d.tag());
    row.model = d.model();
    row.size = d.size();
    row.place = d.place();
    row.state = "available";
    row.persist();
  }

  private static void issued(HelmetIssued d) {
    HelmetCopy row = HelmetCopy.of(d.tag());
    row.state = "issued";
    row.holder = d.player();
    row.place = d.place();
    row.persist();
  }

  private static void returned(HelmetReturned d) {
    HelmetCopy row = HelmetCopy.of(d.tag());
    row.state = "available";
    row.holder = null;
    row.place = d.place();
    row.persist();
  }

  private static void moved(HelmetMoved d) {
    HelmetCopy row = HelmetCopy.of(d.tag());
    row.place = d.to();
    row.persist();
  }

  private void quarantined(HelmetQuarantined d, ReceivedEvent event) {
    HelmetCopy row = HelmetCopy.of(d.tag());
    row.state = "quarantined";
    row.holder = null;
    row.place = d.place();
    row.persist();
    withdraw.helmetFailed(d.tag(), d.why().equals("hold") ? "hold" : "damage", event);
  }

  private static void inspected(HelmetInspected d) {
    if (d.outcome().equals("back-to-stock")) {
      HelmetCopy row = HelmetCopy.of(d.tag());
      row.state = "available";
      row.holder = null;
      row.persist();
    }
  }

  private void retired(HelmetRetired d, ReceivedEvent event) {
    HelmetCopy row = HelmetCopy.of(d.tag());
    row.state = "retired";
    row.holder = null;
    row.persist();
    withdraw.helmetFailed(d.tag(), "retired", event);
  }
}
