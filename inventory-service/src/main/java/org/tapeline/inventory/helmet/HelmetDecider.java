package org.tapeline.inventory.helmet;

import java.util.Optional;
import java.util.UUID;
import org.tapeline.inventory.helmet.Decision.Refused;
import org.tapeline.inventory.helmet.HelmetCommand.ComeBack;
import org.tapeline.inventory.helmet.HelmetCommand.Free;
import org.tapeline.inventory.helmet.HelmetCommand.Hold;
import org.tapeline.inventory.helmet.HelmetCommand.Inspect;
import org.tapeline.inventory.helmet.HelmetCommand.Issue;
import org.tapeline.inventory.helmet.HelmetCommand.Move;
import org.tapeline.inventory.helmet.HelmetCommand.Order;
import org.tapeline.inventory.helmet.HelmetCommand.Receive;
import org.tapeline.inventory.helmet.HelmetCommand.Recertify;
import org.tapeline.inventory.helmet.HelmetCommand.ReportDamage;
import org.tapeline.inventory.helmet.HelmetCommand.Retire;
import org.tapeline.inventory.helmet.HelmetCommand.Return;
import org.tapeline.inventory.helmet.HelmetCommand.SendOut;
import org.tapeline.inventory.helmet.HelmetCommand.SetAside;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetIssued;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetMoved;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetOrdered;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetReceived;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetRecertified;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetReturned;
import org.tapeline.inventory.helmet.HelmetEvent.IssueRefused;
import org.tapeline.inventory.helmet.Lifecycle.Step;

/** Decides what may happen to a helmet. */
public final class HelmetDecider {
  private HelmetDecider() {}

  public static Decision decide(Helmet helmet, HelmetCommand command) {
    return switch (command) {
      case Order c -> order(helmet, c);
      case Receive c -> receive(helmet, c);
      case Issue c -> issue(helmet, c);
      case Return c -> giveBack(helmet, c);
      case Move c -> move(helmet, c);
      case ReportDamage c -> OutOfUse.damage(helmet, c);
      case SetAside c -> OutOfUse.setAside(helmet, c);
      case Inspect c -> OutOfUse.inspect(helmet, c);
      case Hold c -> OutOfUse.hold(helmet, c);
      case Free c -> OutOfUse.free(helmet, c);
      case SendOut c -> OutOfUse.sendOut(helmet, c);
      case ComeBack c -> OutOfUse.comeBack(helmet, c);
      case Recertify c -> recertify(helmet, c);
      case Retire c -> OutOfUse.retire(helmet, c);
    };
  }

  private static Decision order(Helmet helmet, Order c) {
    if (!helmet.allows(Step.ORDER)) {
      return new Refused("tag-taken", Instead.of(helmet.state(), Step.ORDER));
    }
    return Decision.accepted(
        new HelmetOrdered(helmet.tag(), c.model(), c.size(), c.place(), c.expectedOn(), c.at()));
  }

  private static Decision receive(Helmet helmet, Receive c) {
    if (!helmet.allows(Step.RECEIVE)) {
      return new Refused("tag-taken", Instead.of(helmet.state(), Step.RECEIVE));
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
      case ORDERED -> Optional.of("not-received");
      case QUARANTINED -> Optional.of("quarantined");
      case HELD -> Optional.of("held");
      case AT_RECONDITIONER -> Optional.of("at-reconditioner");
      case RETIRED -> Optional.of("retired");
      case ISSUED ->
          helmet.holder().equals(Optional.of(c.player()))
              ? outOfCertification(helmet, c)
              : Optional.of("issued-to-another");
      case AVAILABLE -> outOfCertification(helmet, c).or(() -> pulledAfterFit(helmet, c));
    };
  }

  /**
   * A sign-off that comes late, from before the helmet was last out of use: whatever was done to it
   * meanwhile, it was not fitted since, and the sign-off ended when it was pulled.
   */
  private static Optional<String> pulledAfterFit(Helmet helmet, Issue c) {
    return helmet.backInUse().filter(back -> c.at().isBefore(back)).map(back -> "pulled-after-fit");
  }

  private static Optional<String> outOfCertification(Helmet helmet, Issue c) {
    return helmet
        .certifiedUntil()
        .filter(last -> last.isBefore(c.today()))
        .map(last -> "out-of-certification");
  }

  private static Decision giveBack(Helmet helmet, Return c) {
    if (!helmet.allows(Step.RETURN)) {
      return Instead.refused(helmet, Step.RETURN, "given back");
    }
    UUID player = helmet.holder().orElseThrow();
    return Decision.accepted(new HelmetReturned(helmet.tag(), player, c.place(), c.at()));
  }

  private static Decision move(Helmet helmet, Move c) {
    if (!helmet.allows(Step.MOVE)) {
      return Instead.refused(helmet, Step.MOVE, "moved");
    }
    return helmet.place().equals(c.to())
        ? Decision.accepted()
        : Decision.accepted(new HelmetMoved(helmet.tag(), helmet.place(), c.to(), c.at()));
  }

  private static Decision recertify(Helmet helmet, Recertify c) {
    if (!helmet.allows(Step.RECERTIFY)) {
      return Instead.refused(helmet, Step.RECERTIFY, "certified");
    }
    return Decision.accepted(
        new HelmetRecertified(helmet.tag(), c.certifiedUntil(), c.how(), c.by(), c.at()));
  }
}
