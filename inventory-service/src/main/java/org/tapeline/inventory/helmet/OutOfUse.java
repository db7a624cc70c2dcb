package org.tapeline.inventory.helmet;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.tapeline.inventory.helmet.Helmet.State;
import org.tapeline.inventory.helmet.HelmetCommand.ComeBack;
import org.tapeline.inventory.helmet.HelmetCommand.Free;
import org.tapeline.inventory.helmet.HelmetCommand.Hold;
import org.tapeline.inventory.helmet.HelmetCommand.Inspect;
import org.tapeline.inventory.helmet.HelmetCommand.ReportDamage;
import org.tapeline.inventory.helmet.HelmetCommand.Retire;
import org.tapeline.inventory.helmet.HelmetCommand.SendOut;
import org.tapeline.inventory.helmet.HelmetCommand.SetAside;
import org.tapeline.inventory.helmet.HelmetEvent.DamageReported;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetCameBack;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetFreed;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetHeld;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetInspected;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetQuarantined;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetRecertified;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetRetired;
import org.tapeline.inventory.helmet.HelmetEvent.HelmetSentOut;
import org.tapeline.inventory.helmet.Lifecycle.Step;

/** Decides what takes a helmet out of use, and what brings it back. */
final class OutOfUse {
  private OutOfUse() {}

  static Decision damage(Helmet helmet, ReportDamage c) {
    if (!helmet.allows(Step.REPORT_DAMAGE)) {
      return Instead.refused(helmet, Step.REPORT_DAMAGE, "reported damaged");
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
            c.rulesVersion(),
            c.by(),
            c.at());
    return c.structural() && helmet.state() != State.QUARANTINED
        ? Decision.accepted(reported, quarantined(helmet, "damage", c.at()))
        : Decision.accepted(reported);
  }

  /** One that is out of use already, or is not known here, needs nothing more. */
  static Decision setAside(Helmet helmet, SetAside c) {
    return helmet.allows(Step.SET_ASIDE)
        ? Decision.accepted(quarantined(helmet, "inspection", c.at()))
        : Decision.accepted();
  }

  private static HelmetQuarantined quarantined(Helmet helmet, String why, Instant at) {
    return new HelmetQuarantined(helmet.tag(), why, helmet.holder(), helmet.place(), at);
  }

  static Decision inspect(Helmet helmet, Inspect c) {
    if (!helmet.allows(Step.INSPECT)) {
      return Instead.refused(helmet, Step.INSPECT, "inspected");
    }
    HelmetInspected inspected =
        new HelmetInspected(
            helmet.tag(),
            c.backToStock() ? "back-to-stock" : "retire",
            List.copyOf(c.findings()),
            Optional.of(helmet.backInStock().says()).filter(state -> c.backToStock()),
            List.copyOf(c.parts()),
            c.rulesVersion(),
            c.by(),
            c.at());
    return c.backToStock()
        ? Decision.accepted(inspected)
        : Decision.accepted(inspected, new HelmetRetired(helmet.tag(), "inspection", c.at()));
  }

  /** The same hold twice is one; one on a helmet that is gone for good says nothing. */
  static Decision hold(Helmet helmet, Hold c) {
    if (!helmet.allows(Step.HOLD) || helmet.holds().contains(c.hold())) {
      return Decision.accepted();
    }
    HelmetHeld held = held(helmet, c, helmet.says());
    return Decision.accepted(held(helmet, c, Helmet.evolve(helmet, held).says()));
  }

  private static HelmetHeld held(Helmet helmet, Hold c, String state) {
    return new HelmetHeld(helmet.tag(), c.hold(), helmet.holder(), helmet.place(), state, c.at());
  }

  static Decision free(Helmet helmet, Free c) {
    if (!helmet.allows(Step.FREE) || !helmet.holds().contains(c.hold())) {
      return Decision.accepted();
    }
    HelmetFreed freed = freed(helmet, c, helmet.says());
    return Decision.accepted(freed(helmet, c, Helmet.evolve(helmet, freed).says()));
  }

  private static HelmetFreed freed(Helmet helmet, Free c, String state) {
    return new HelmetFreed(helmet.tag(), c.hold(), helmet.place(), state, c.at());
  }

  static Decision sendOut(Helmet helmet, SendOut c) {
    return helmet.allows(Step.SEND_OUT)
        ? Decision.accepted(new HelmetSentOut(helmet.tag(), c.batch(), helmet.place(), c.at()))
        : Instead.refused(helmet, Step.SEND_OUT, "sent out");
  }

  static Decision comeBack(Helmet helmet, ComeBack c) {
    if (!helmet.allows(Step.COME_BACK)) {
      return Instead.refused(helmet, Step.COME_BACK, "taken back from the reconditioner");
    }
    HelmetCameBack back =
        new HelmetCameBack(helmet.tag(), c.place(), helmet.backInStock().says(), c.at());
    return c.certifiedUntil()
        .map(until -> new HelmetRecertified(helmet.tag(), until, "reconditioned", c.by(), c.at()))
        .map(certified -> Decision.accepted(certified, back))
        .orElseGet(() -> Decision.accepted(back));
  }

  static Decision retire(Helmet helmet, Retire c) {
    return helmet.allows(Step.RETIRE)
        ? Decision.accepted(new HelmetRetired(helmet.tag(), c.why(), c.at()))
        : Instead.refused(helmet, Step.RETIRE, "retired");
  }
}
