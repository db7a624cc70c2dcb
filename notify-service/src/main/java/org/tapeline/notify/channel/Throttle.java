package org.tapeline.notify.channel;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import io.github.bucket4j.TimeMeter;
import io.github.resilience4j.circuitbreaker.CircuitBreaker;
import io.github.resilience4j.circuitbreaker.CircuitBreakerConfig;
import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.TimeUnit;

/**
 * Keeps a channel within its rate, and lets it rest when it fails as a whole: no more tries are
 * spent on a server that is away, and when it is back it is not flooded.
 */
final class Throttle {
  private static final int LEAST_CALLS = 5;
  private static final int WINDOW = 10;
  private static final float FAILURES_PERCENT = 50;
  private static final Duration LONGEST_PAUSE = Duration.ofMinutes(15);

  private final Bucket bucket;
  private final CircuitBreaker breaker;
  private final Clock clock;
  private volatile Instant pausedUntil = Instant.EPOCH;

  Throttle(String name, int perSecond, Duration restWhenDown, Clock clock) {
    this.clock = clock;
    this.bucket =
        Bucket.builder()
            .withCustomTimePrecision(new ByClock(clock))
            .addLimit(
                limit -> limit.capacity(perSecond).refillGreedy(perSecond, Duration.ofSeconds(1)))
            .build();
    this.breaker =
        CircuitBreaker.of(
            name,
            CircuitBreakerConfig.custom()
                .clock(clock)
                .minimumNumberOfCalls(LEAST_CALLS)
                .slidingWindowSize(WINDOW)
                .failureRateThreshold(FAILURES_PERCENT)
                .waitDurationInOpenState(restWhenDown)
                .permittedNumberOfCallsInHalfOpenState(1)
                .build());
  }

  /** Zero: one message may go now, to be answered by {@link #answered} or {@link #giveBack}. */
  Duration ask() {
    Duration paused = Duration.between(clock.instant(), pausedUntil);
    if (paused.isPositive()) {
      return paused;
    }
    if (!breaker.tryAcquirePermission()) {
      return Duration.ofMillis(200);
    }
    ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
    if (probe.isConsumed()) {
      return Duration.ZERO;
    }
    breaker.releasePermission();
    return Duration.ofNanos(probe.getNanosToWaitForRefill());
  }

  /** There was nothing to send after all. */
  void giveBack() {
    bucket.addTokens(1);
    breaker.releasePermission();
  }

  void answered(SendOutcome outcome, Duration took) {
    switch (outcome) {
      case SendOutcome.Down down ->
          breaker.onError(took.toNanos(), TimeUnit.NANOSECONDS, new IOException(down.code()));
      case SendOutcome.Busy busy -> pause(busy.pause());
      case SendOutcome.Taken t -> breaker.onSuccess(took.toNanos(), TimeUnit.NANOSECONDS);
      case SendOutcome.AddressRefused r -> breaker.onSuccess(took.toNanos(), TimeUnit.NANOSECONDS);
      case SendOutcome.MessageRefused r -> breaker.onSuccess(took.toNanos(), TimeUnit.NANOSECONDS);
      case SendOutcome.Failed f -> breaker.onSuccess(took.toNanos(), TimeUnit.NANOSECONDS);
    }
  }

  /** Whether the channel rests since it failed. */
  boolean resting() {
    return breaker.getState() != CircuitBreaker.State.CLOSED
        || clock.instant().isBefore(pausedUntil);
  }

  /** A server's wish for a pause counts, within reason. */
  private void pause(Duration pause) {
    breaker.releasePermission();
    Instant until =
        clock.instant().plus(pause.compareTo(LONGEST_PAUSE) > 0 ? LONGEST_PAUSE : pause);
    if (until.isAfter(pausedUntil)) {
      pausedUntil = until;
    }
  }

  /** The rate by the same clock as everything else. */
  private record ByClock(Clock clock) implements TimeMeter {
    @Override
    public long currentTimeNanos() {
      Instant now = clock.instant();
      return now.getEpochSecond() * 1_000_000_000L + now.getNano();
    }

    @Override
    public boolean isWallClockBased() {
      return true;
    }
  }
}
