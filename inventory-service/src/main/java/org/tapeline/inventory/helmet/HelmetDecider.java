package org.tapeline.inventory.helmet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.helmet.Decision.Refused;
import org.tapeline.inventory.helmet.Helmet.State;
import org.tapeline.inventory.helmet.Helmet.Step;
import org.tapeline.inventory.helmet.HelmetCommand.Inspect;
import org.tapeline.inventory.helmet.HelmetCommand.Issue;
import org.tapeline.inventory.helmet.HelmetCommand.Move;
import org.tapeline.inventory.helmet.HelmetCommand.Receive;
import org.tapeline.inventory.helmet.HelmetCommand.ReportDamage;
import org.tapeline.inventory.helmet.HelmetCommand.Retire;
import org.tapeline.inventory.helmet.HelmetCommand.Return;
import org.tapeline.inventory.helmet.HelmetCommand.SetAside;
import org.tapeline.inventory.helmet.HelmetEvent.DamageReported;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetInspected;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetIssued;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetMoved;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetQuarantined;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetReceived;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetRetired;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetReturned;
import org.tapeline.inventory.helmet.HelmetEvent.IssueRefused;

/** Decides what may happen to a helmet. */
public final class HelmetDecider {
  private HelmetDecider() {}

  public static Decision decide(Helmet helmet, HelmetCommand command) {
    return switch (command) {
      case Receive c -> receive(helmet, c);
      case Issue c -> issue(helmet, c);
      case Return c -> giveBack(helmet, c);
      case Move c -> move(helmet, c);
      case ReportDamage c -> damage(helmet, c);
      case SetAside c -> setAside(helmet, c);
      case Inspect c -> inspect(helmet, c);
      case Retire c -> retire(helmet, c);
    };
  }

  private static Decision receive(Helmet helmet, Receive c) {
    if (!helmet.allows(Step.RECEIVE)) {
      return new Refused("tag-taken", "This tag is on another helmet already. Check the tag.");
    }
    return Decision.accepted(
        new HelmetReceived(
            helmet.tag(),
            c.model(),
            c.size(),
            c.lot(),
            c.manufacturedOn(),
            c.certifiedUntil(),
            c.place(),
            c.at()));
  }

  /** Not a refusal but an event when it cannot be: the sign-off must learn of it. */
  private static Decision issue(Helmet helmet, Issue c) {
    Optional<String> why = whyNotIssued(helmet, c);
    if (why.isPresent()) {
      return Decision.accepted(
          new IssueRefused(helmet.tag(), c.player(), c.session(), why.get(), c.at()));
    }
    return Decision.accepted(
        new HelmetIssued(helmet.tag(), c.player(), c.place(), c.session(), c.at()));
  }

  private static Optional<String> whyNotIssued(Helmet helmet, Issue c) {
    return switch (helmet.state()) {
      case UNKNOWN -> Optional.of("unknown-helmet");
      case QUARANTINED -> Optional.of("quarantined");
      case RETIRED -> Optional.of("retired");
      case ISSUED ->
          helmet.holder().equals(Optional.of(c.player()))
              ? outOfCertification(helmet, c)
              : Optional.of("issued-to-another");
      case AVAILABLE -> outOfCertification(helmet, c);
    };
  }

  private static Optional<String> outOfCertification(Helmet helmet, Issue c) {
    return helmet
        .certifiedUntil()
        .filter(last -> last.isBefore(c.today()))
        .map(last -> "out-of-certification");
  }

  private static Decision giveBack(Helmet helmet, Return c) {
    if (!helmet.allows(Step.RETURN)) {
      return notNow(helmet, "given back");
    }
    UUID player = helmet.holder().orElseThrow();
    return Decision.accepted(new HelmetReturned(helmet.tag(), player, c.place(), c.at()));
  }

  private static Decision move(Helmet helmet, Move c) {
    if (!helmet.allows(Step.MOVE)) {
      return notNow(helmet, "moved");
    }
    return helmet.place().equals(c.to())
        ? Decision.accepted()
        : Decision.accepted(new HelmetMoved(helmet.tag(), helmet.place(), c.to(), c.at()));
  }

  private static Decision damage(Helmet helmet, ReportDamage c) {
    if (!helmet.allows(Step.REPORT_DAMAGE)) {
      return notNow(helmet, "reported damaged");
    }
    DamageReported reported =
        new DamageReported(
            c.report(),
            helmet.tag(),
            c.where(),
            c.what(),
            c.structural() ? "structural" : "cosmetic",
            helmet.holder(),
            helmet.place(),
            c.by(),
            c.at());
    return c.structural() && helmet.state() != State.QUARANTINED
        ? Decision.accepted(
            reported,
            new HelmetQuarantined(helmet.tag(), "damage", helmet.holder(), helmet.place(), c.at()))
        : Decision.accepted(reported);
  }

  /** One that is out of use already, or is not known here, needs nothing more. */
  private static Decision setAside(Helmet helmet, SetAside c) {
    return helmet.allows(Step.SET_ASIDE)
        ? Decision.accepted(
            new HelmetQuarantined(
                helmet.tag(), "inspection", helmet.holder(), helmet.place(), c.at()))
        : Decision.accepted();
  }

  private static Decision inspect(Helmet helmet, Inspect c) {
    if (!helmet.allows(Step.INSPECT)) {
      return notNow(helmet, "inspected");
    }
    HelmetInspected inspected =
        new HelmetInspected(
            helmet.tag(),
            c.backToStock() ? "back-to-stock" : "retire",
            List.copyOf(c.findings()),
            c.by(),
            c.at());
    return c.backToStock()
        ? Decision.accepted(inspected)
        : Decision.accepted(inspected, new HelmetRetired(helmet.tag(), "inspection", c.at()));
  }

  private static Decision retire(Helmet helmet, Retire c) {
    return helmet.allows(Step.RETIRE)
        ? Decision.accepted(new HelmetRetired(helmet.tag(), c.why(), c.at()))
        : notNow(helmet, "retired");
  }

  private static Refused notNow(Helmet helmet, String what) {
    String state =
        helmet.state() == State.UNKNOWN
            ? "not known here"
            : helmet.state().name().toLowerCase(Locale.ROOT);
    return new Refused(
        "helmet-" + state.replace(' ', '-'),
        "The helmet " + helmet.tag() + " is " + state + " and cannot be " + what + ".");
  }
}
