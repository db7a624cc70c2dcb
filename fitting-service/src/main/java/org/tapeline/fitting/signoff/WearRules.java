package org.tapeline.fitting.signoff;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.fitting.recheck.RecheckPlan;

/**
 * Whether a player may wear the helmet, from what is known at this moment. Nothing but a sign-off
 * that holds, on a helmet that is in service and with this player, is "may wear"; whatever is
 * missing counts against it. Worked out when it is asked for, so that no timer has to run.
 */
public final class WearRules {
  private WearRules() {}

  /**
   * The newest word on the player's sign-off.
   *
   * @param state signed-off, withdrawn or lapsed
   * @param why code of the reason; empty when signed off
   * @param at when
   */
  public record Word(UUID player, String state, String why, Instant at) {}

  /**
   * The helmet of the sign-off as inventory tells.
   *
   * @param state available, issued, quarantined or retired
   * @param readable all its events could be read
   */
  public record Helmet(
      String state,
      Optional<UUID> holder,
      Optional<LocalDate> certifiedUntil,
      Optional<Instant> returnedAt,
      boolean readable) {}

  /**
   * How fresh the picture is.
   *
   * @param caughtUpAt up to when everything that others said is known; empty when not at all
   * @param oldest how old it may be
   * @param since the moment in words, at the player's field
   */
  public record Picture(Optional<Instant> caughtUpAt, Duration oldest, String since) {
    boolean old(Instant now) {
      return caughtUpAt.isEmpty() || caughtUpAt.get().plus(oldest).isBefore(now);
    }
  }

  /**
   * @param today the day at the player's field
   */
  public static WearState state(
      Optional<Word> word,
      Optional<Helmet> helmet,
      Picture picture,
      RecheckPlan plan,
      Instant now,
      LocalDate today) {
    if (picture.old(now)) {
      return WearState.unknown(
          picture.caughtUpAt().isEmpty()
              ? "Not known yet: the service has just started"
              : "Not known since " + picture.since());
    }
    if (word.isEmpty()) {
      return WearState.doNotWear("never-fitted", "Not fitted yet");
    }
    return switch (word.get().state()) {
      case SignOff.SIGNED_OFF -> signedOff(word.get(), helmet, plan, now, today);
      case SignOff.LAPSED -> WearState.doNotWear("lapsed", "The sign-off has lapsed: fit again");
      default -> WearState.doNotWear("withdrawn", reason(word.get().why()));
    };
  }

  private static WearState signedOff(
      Word word, Optional<Helmet> helmet, RecheckPlan plan, Instant now, LocalDate today) {
    if (helmet.filter(h -> !h.readable()).isPresent()) {
      return WearState.unknown("News of this helmet could not be read. Tell the equipment manager");
    }
    Optional<String> against = helmet.map(h -> against(word, h, today)).orElse(NOT_RECORDED);
    if (against.isPresent()) {
      return WearState.doNotWear("withdrawn", against.get());
    }
    if (!now.isBefore(plan.lapsesAt(word.at()))) {
      return WearState.doNotWear("lapsed", "The re-check is overdue: the sign-off has lapsed");
    }
    return now.isBefore(plan.dueAt(word.at()))
        ? WearState.mayWear()
        : WearState.checkToday("The weekly re-check is due");
  }

  private static final Optional<String> NOT_RECORDED = Optional.of("The helmet is not on record");

  private static Optional<String> against(Word word, Helmet helmet, LocalDate today) {
    if (helmet.certifiedUntil().filter(today::isAfter).isPresent()) {
      return Optional.of("The certification of the helmet has ended");
    }
    return switch (helmet.state()) {
      case "issued" ->
          helmet.holder().filter(word.player()::equals).isPresent()
              ? Optional.empty()
              : Optional.of("By the records another player has this helmet");
      // Just signed off and not yet booked out, or handed back since.
      case "available" ->
          helmet.returnedAt().filter(at -> !at.isBefore(word.at())).isPresent()
              ? Optional.of("The helmet was handed back")
              : Optional.empty();
      default -> Optional.of("The helmet is not in service");
    };
  }

  private static String reason(String why) {
    return switch (why) {
      case "fit-failed" -> "The fit check failed";
      case "damage" -> "The helmet is damaged and in quarantine";
      case "hold" -> "The helmet is on hold";
      case "issue-refused" -> "The helmet could not be issued to this player";
      case "pass-taken-back" -> "The fit check was recorded by mistake";
      case "retired" -> "The helmet is retired";
      case "handed-on" -> "The helmet was fitted to another player";
      case "suspected-concussion" -> "Out of play: a licensed professional decides the return";
      default -> "The sign-off was withdrawn";
    };
  }
}
