package org.tapeline.notify.channel;

import io.quarkus.arc.DefaultBean;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.List;
import java.util.Optional;

/** As long as nobody is asked: the policy's order counts for all. */
@DefaultBean
@ApplicationScoped
class NoWishes implements Wishes {

  @Override
  public List<String> of(String recipient) {
    return List.of();
  }

  @Override
  public Optional<Instant> quietUntil(String recipient, Instant now) {
    return Optional.empty();
  }
}
