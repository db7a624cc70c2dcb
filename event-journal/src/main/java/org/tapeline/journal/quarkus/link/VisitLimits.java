package org.tapeline.journal.quarkus.link;

import io.github.bucket4j.Bucket;
import io.github.bucket4j.ConsumptionProbe;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/**
 * How often pages behind links may be visited: from one address, and with one token. Many families
 * share an address (a school, a mobile network, a mail scanner), so that limit is the wider one; it
 * keeps a machine from being kept busy, while guessing is hopeless at any speed. Each copy of a
 * service counts for itself.
 */
@ApplicationScoped
public class VisitLimits {
  private final Counted addresses;
  private final Counted tokens;

  VisitLimits(
      @ConfigProperty(name = "tapeline.link.visits-a-minute.address", defaultValue = "300")
          int perAddress,
      @ConfigProperty(name = "tapeline.link.visits-a-minute.token", defaultValue = "60")
          int perToken) {
    this.addresses = new Counted(perAddress);
    this.tokens = new Counted(perToken);
  }

  /**
   * Zero when the visit is within both limits; else for how long to stay away.
   *
   * @param token empty for a page that is the same for everybody
   */
  Duration visit(String address, Optional<String> token) {
    Duration wait = addresses.take(network(address));
    return wait.isPositive() ? wait : token.map(tokens::take).orElse(Duration.ZERO);
  }

  /**
   * Of IPv6 the first four groups: a household has all addresses that begin with them. Common
   * practice, no source.
   */
  static String network(String address) {
    String[] groups = address.split(":", -1);
    boolean long6 = groups.length == 8 && !address.contains("::");
    return long6 ? String.join(":", groups[0], groups[1], groups[2], groups[3]) : address;
  }

  /** Those who came last; the longest gone are forgotten, so that nobody fills the memory. */
  private static final class Counted {
    private final int perMinute;
    private final Newest buckets = new Newest();

    Counted(int perMinute) {
      this.perMinute = perMinute;
    }

    synchronized Duration take(String who) {
      String key = who.length() > Newest.LONGEST_KEY ? who.substring(0, Newest.LONGEST_KEY) : who;
      Bucket bucket = buckets.computeIfAbsent(key, k -> full());
      ConsumptionProbe probe = bucket.tryConsumeAndReturnRemaining(1);
      return probe.isConsumed() ? Duration.ZERO : Duration.ofNanos(probe.getNanosToWaitForRefill());
    }

    private Bucket full() {
      return Bucket.builder()
          .addLimit(
              limit -> limit.capacity(perMinute).refillGreedy(perMinute, Duration.ofMinutes(1)))
          .build();
    }
  }

  private static final class Newest extends LinkedHashMap<String, Bucket> {
    private static final long serialVersionUID = 1L;
    private static final int MOST = 20_000;

    /** A genuine token is shorter. */
    private static final int LONGEST_KEY = 200;

    private Newest() {
      super(16, 0.75f, true);
    }

    @Override
    protected boolean removeEldestEntry(Map.Entry<String, Bucket> longestGone) {
      return size() > MOST;
    }
  }
}
