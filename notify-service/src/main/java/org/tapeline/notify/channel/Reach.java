package org.tapeline.notify.channel;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.tapeline.notify.notice.NoticeKind;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.notice.Way;
import org.tapeline.notify.notice.Ways;
import org.tapeline.notify.optout.OptOuts;

/** Which channel a recipient is tried on; in the caller's transaction. */
@ApplicationScoped
public class Reach implements Ways {
  private final List<Channel> channels;
  private final ChannelPolicy policy;
  private final Wishes wishes;
  private final Bounces bounces;
  private final OptOuts optOuts;

  Reach(
      @All List<Channel> channels,
      ChannelPolicy policy,
      Wishes wishes,
      Bounces bounces,
      OptOuts optOuts) {
    this.channels = channels;
    this.policy = policy;
    this.wishes = wishes;
    this.bounces = bounces;
    this.optOuts = optOuts;
  }

  @Override
  public Way first(String recipient, NoticeKind kind, Urgency urgency) {
    if (turnedOff(recipient, kind)) {
      return new Way.TurnedOff();
    }
    return next(recipient, urgency, Set.of()).<Way>map(Way.By::new).orElseGet(Way.None::new);
  }

  /** Whether the person turned such news off; never true of what is about safety. */
  boolean turnedOff(String recipient, NoticeKind kind) {
    return kind.mayBeTurnedOff() && optOuts.has(recipient);
  }

  /** Until when the person is not to be written to; never what says "do not wear". */
  Optional<Instant> quietUntil(String recipient, Urgency urgency, Instant now) {
    return urgency == Urgency.DO_NOT_WEAR ? Optional.empty() : wishes.quietUntil(recipient, now);
  }

  /**
   * @param used channels that were tried before
   */
  public Optional<String> next(String recipient, Urgency urgency, Set<String> used) {
    Set<String> known =
        channels.stream()
            .filter(c -> c.on() && !used.contains(c.code()))
            .filter(c -> c.addressOf(recipient).isPresent())
            .map(Channel::code)
            .collect(Collectors.toUnmodifiableSet());
    return ChannelPlan.of(
            policy.of(urgency).order(), wishes.of(recipient), known, bounces.of(recipient))
        .stream()
        .findFirst();
  }
}
