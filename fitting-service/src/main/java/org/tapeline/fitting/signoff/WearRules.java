package org.tapeline.fitting.signoff;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import org.tapeline.fitting.recheck.RecheckRules.Check;

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
   * @param state available, issued, quarantined, held, at-reconditioner or retired
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
   * What is known of one player.
   *
   * @param outOfPlay a concussion was suspected and nobody has confirmed since that a licensed
   *     health-care professional cleared the return
   * @param checks the re-checks ahead of the sign-off; the weekly one is always among them
   */
  public record Known(
      Optional<Word> word, Optional<Helmet> helmet, boolean outOfPlay, List<Check> checks) {}

  /**
   * Out of play comes before everything, also before an old picture: it is this service's own
   * knowledge.
   *
   * @param today the day at the player's field
   */
  public static WearState state(Known known, Picture picture, Instant now, LocalDate today) {
    if (known.outOfPlay()) {
      return WearState.doNotWear("out-of-play", OUT_OF_PLAY);
    }
    if (picture.old(now)) {
      return WearState.unknown(
          picture.caughtUpAt().isEmpty()
              ? "Not known yet: the service has just started"
              : "Not known since " + picture.since());
    }
    if (known.word().isEmpty()) {
      return WearState.doNotWear("never-fitted", "Not fitted yet");
    }
    Word word = known.word().get();
    return switch (word.state()) {
      case SignOff.SIGNED_OFF -> signedOff(word, known, now, today);
      case SignOff.LAPSED -> WearState.doNotWear("lapsed", lapsed(word.why()));
      default -> WearState.doNotWear("withdrawn", reason(word.why()));
    };
  }

  private static WearState signedOff(Word word, Known known, Instant now, LocalDate today) {
    if (known.helmet().filter(h -> !h.readable()).isPresent()) {
      return WearState.unknown("News of this helmet could not be read. Tell the equipment manager");
    }
    Optional<String> against =
        known.helmet().map(h -> against(word, h, today)).orElse(NOT_RECORDED);
    if (against.isPresent()) {
      return WearState.doNotWear("withdrawn", against.get());
    }
    return checked(known.checks(), now);
  }

  /** A sign-off for which no re-check is planned would hold for ever: that is not believed. */
  private static WearState checked(List<Check> checks, Instant now) {
    if (checks.isEmpty()) {
      return WearState.unknown("The re-checks of this sign-off are not known");
    }
    if (checks.stream().anyMatch(check -> check.lapsed(now))) {
      return WearState.doNotWear("lapsed", "The re-check is overdue: the sign-off has lapsed");
    }
    List<Check> due = checks.stream().filter(check -> check.due(now)).toList();
    return due.isEmpty()
        ? WearState.mayWear()
        : WearState.checkToday(due.stream().map(Check::said).collect(Collectors.joining("; ")));
  }

  private static final String OUT_OF_PLAY =
      "Out of play: a licensed health-care professional decides the return";

  private static final String ON_HOLD = "The helmet is on hold";

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
      case "held" -> Optional.of(ON_HOLD);
      default -> Optional.of("The helmet is not in service");
    };
  }

  private static String lapsed(String why) {
    return why.equals("out-of-certification")
        ? "The certification of the helmet has ended"
        : "The sign-off has lapsed: fit again";
  }

  private static String reason(String why) {
    return switch (why) {
      case "fit-failed" -> "The fit check failed";
      case "damage" -> "The helmet is damaged and in quarantine";
      case "hold" -> ON_HOLD;
      case "issue-refused" -> "The helmet could not be issued to this player";
      case "pass-taken-back" -> "The fit check was recorded by mistake";
      case "retired" -> "The helmet is retired";
      case "handed-on" -> "The helmet was fitted to another player";
      case "inspection", "suspected-concussion" -> "The helmet went to inspection: fit again";
      default -> "The sign-off was withdrawn";
    };
  }
}
