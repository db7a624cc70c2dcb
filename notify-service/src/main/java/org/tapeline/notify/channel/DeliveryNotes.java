package org.tapeline.notify.channel;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.transaction.Transactional;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.concurrent.ThreadLocalRandom;
import org.tapeline.notify.notice.NoticeCommand;
import org.tapeline.notify.notice.NoticeRow;
import org.tapeline.notify.notice.NoticeTryRow;
import org.tapeline.notify.notice.Notices;
import org.tapeline.notify.notice.Urgency;
import org.tapeline.notify.notice.WhyUndeliverable;

/** Notes how tries ended and what follows from it. */
@ApplicationScoped
class DeliveryNotes {
  private final Notices notices;
  private final Fallback fallback;
  private final Bounces bounces;
  private final ChannelPolicy policy;
  private final Clock clock;

  DeliveryNotes(
      Notices notices, Fallback fallback, Bounces bounces, ChannelPolicy policy, Clock clock) {
    this.notices = notices;
    this.fallback = fallback;
    this.bounces = bounces;
    this.policy = policy;
    this.clock = clock;
  }

  @Transactional
  void note(Claim claim, Channel channel, SendOutcome outcome) {
    NoticeRow row = NoticeRow.locked(claim.notice());
    switch (outcome) {
      case SendOutcome.Taken t -> taken(claim, channel, row, t);
      case SendOutcome.AddressRefused r -> {
        bounces.note(row.recipient, channel.code(), r.code(), clock.instant());
        giveUp(claim, "refused", r.code(), WhyUndeliverable.ADDRESS_REFUSED);
      }
      case SendOutcome.MessageRefused r ->
          giveUp(claim, "refused", r.code(), WhyUndeliverable.MESSAGE_REFUSED);
      case SendOutcome.Failed f -> failed(claim, row, f.code(), channel, row.channelAttempts);
      case SendOutcome.Down d -> failedWithAll(claim, row, d.code(), channel, Duration.ZERO);
      case SendOutcome.Busy b -> failedWithAll(claim, row, b.code(), channel, b.pause());
    }
  }

  /** Notes that there is nobody, or nothing, to send to any more. */
  @Transactional
  void noteNobody(Claim claim) {
    if (claim.erased()) {
      giveUp(claim, "failed", "erased", WhyUndeliverable.ERASED);
    } else {
      giveUp(claim, "failed", "no-address", WhyUndeliverable.NO_ADDRESS);
    }
  }

  private void taken(Claim claim, Channel channel, NoticeRow row, SendOutcome.Taken taken) {
    end(claim, "taken", null);
    bounces.forget(row.recipient, channel.code());
    if (channel.taken(claim.notice(), taken.id())) {
      notices.decide(
          claim.notice(),
          new NoticeCommand.NoteSent(channel.code(), claim.attempt(), clock.instant()),
          claim.cause());
    }
  }

  /** The channel's fault does not count as the message's: it waits no longer than for the first. */
  private void failedWithAll(
      Claim claim, NoticeRow row, String code, Channel channel, Duration pause) {
    row.channelAttempts--;
    failed(claim, row, code, channel, 1);
    if (row.nextTryAt != null && channel.code().equals(row.channel)) {
      row.nextTryAt = row.nextTryAt.plus(pause);
    }
  }

  private void failed(Claim claim, NoticeRow row, String code, Channel channel, int attempt) {
    if (row.nextTryAt == null || !channel.code().equals(row.channel)) {
      end(claim, "failed", code);
      return;
    }
    Instant now = clock.instant();
    ChannelLimits limits = channel.limits();
    Optional<Instant> next =
        new BackOff(limits.backOff(), limits.giveUpAfter())
            .next(attempt, row.channelSince, now, ThreadLocalRandom.current().nextDouble());
    Duration patience = policy.of(Urgency.of(row.urgency)).moveOnAfter();
    boolean longEnough = !now.isBefore(row.channelSince.plus(patience));
    if (next.isEmpty() || longEnough && fallback.next(row).isPresent()) {
      giveUp(claim, "failed", code, WhyUndeliverable.TRIES_USED_UP);
      return;
    }
    end(claim, "failed", code);
    row.nextTryAt = next.get();
  }

  private void giveUp(Claim claim, String outcome, String code, WhyUndeliverable why) {
    end(claim, outcome, code);
    fallback.exhausted(claim.notice(), claim.channel(), why, claim.cause());
  }

  private void end(Claim claim, String outcome, String code) {
    NoticeTryRow.end(claim.notice(), claim.attempt(), clock.instant(), outcome, code);
  }
}
