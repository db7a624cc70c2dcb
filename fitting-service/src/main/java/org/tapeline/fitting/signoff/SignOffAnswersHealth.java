package org.tapeline.fitting.signoff;

import io.smallrye.health.api.HealthGroup;
import io.smallrye.health.api.Wellness;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;

/**
 * Whether "who may wear what?" is answered from a fresh picture. While it is not, every answer is
 * "not known", and whoever asks by machine should ask elsewhere or later. It is no part of
 * readiness: fitters must be able to go on entering what they did.
 */
@Wellness
@HealthGroup("answers")
@ApplicationScoped
class SignOffAnswersHealth implements HealthCheck {
  private final Sideline sideline;
  private final Clock clock;

  SignOffAnswersHealth(Sideline sideline, Clock clock) {
    this.sideline = sideline;
    this.clock = clock;
  }

  @Override
  public HealthCheckResponse call() {
    Optional<Instant> asOf = sideline.asOf();
    boolean known = !new WearRules.Picture(asOf, sideline.oldestPicture(), "").old(clock.instant());
    return HealthCheckResponse.named("sign-off answers")
        .status(known)
        .withData(
            known ? "knownUpTo" : "notKnownSince", asOf.map(Instant::toString).orElse("the start"))
        .build();
  }
}
