package org.tapeline.fitting.signoff;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.runtime.StartupEvent;
import io.quarkus.scheduler.Scheduled;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Clock;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.tapeline.fitting.roster.PlayerCopy;
import org.tapeline.journal.Transactions;

/**
 * How many players are shown how, for whoever looks after the service. Counted now and then over
 * the whole roster by the rules of the list itself; an old picture turns all of them to "unknown"
 * at once, as it does on the list.
 */
@ApplicationScoped
class WearStateGauges {
  private static final int AT_A_TIME = 500;
  private static final String UNKNOWN = "unknown";
  private static final List<String> CODES =
      List.of("may-wear", "check-today", "do-not-wear", UNKNOWN);

  private final MeterRegistry registry;
  private final Sideline sideline;
  private final Transactions transactions;
  private final Clock clock;

  /** Empty until they have been counted. */
  private volatile Map<String, Integer> counted = Map.of();

  WearStateGauges(
      MeterRegistry registry, Sideline sideline, Transactions transactions, Clock clock) {
    this.registry = registry;
    this.sideline = sideline;
    this.transactions = transactions;
    this.clock = clock;
  }

  void register(@Observes StartupEvent event) {
    for (String code : CODES) {
      Gauge.builder("tapeline.players", () -> shown(code))
          .description("Players on the roster by what the sideline list says of them")
          .tag("state", code)
          .register(registry);
    }
  }

  private Integer shown(String code) {
    Map<String, Integer> now = counted;
    if (now.isEmpty()) {
      return null;
    }
    if (new WearRules.Picture(sideline.asOf(), sideline.oldestPicture(), "").old(clock.instant())) {
      int all = now.values().stream().mapToInt(Integer::intValue).sum();
      return code.equals(UNKNOWN) ? all : 0;
    }
    return now.get(code);
  }

  @Scheduled(
      every = "{tapeline.sideline.count-every}",
      concurrentExecution = Scheduled.ConcurrentExecution.SKIP)
  void count() {
    Map<String, Integer> states = new HashMap<>();
    CODES.forEach(code -> states.put(code, 0));
    List<UUID> players =
        transactions.required(c -> PlayerCopy.onRoster().stream().map(p -> p.player).toList());
    for (int from = 0; from < players.size(); from += AT_A_TIME) {
      List<UUID> some = players.subList(from, Math.min(from + AT_A_TIME, players.size()));
      transactions
          .required(c -> sideline.lines(PlayerCopy.among(some)))
          .forEach(line -> states.merge(line.state().code(), 1, Integer::sum));
    }
    counted = Map.copyOf(states);
  }
}
