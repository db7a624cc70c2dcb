package org.tapeline.proof.fuzz;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import org.tapeline.proof.fuzz.endpoint.Draft;
import org.tapeline.proof.fuzz.endpoint.Endpoint;
import org.tapeline.proof.fuzz.endpoint.Known;
import org.tapeline.proof.fuzz.endpoint.Plain;
import org.tapeline.proof.fuzz.endpoint.Twist;
import org.tapeline.proof.fuzz.wire.Answer;
import org.tapeline.proof.fuzz.wire.Call;
import org.tapeline.proof.fuzz.wire.Wire;

/**
 * Tries every endpoint with every twist, in an order that the seed shuffles, again and again until
 * the time is up.
 */
final class EndpointFuzz {
  private static final int AT_ONCE = 4;
  private static final int MOST_TO_LEARN = 20_000;
  private static final ObjectMapper JSON = new ObjectMapper();

  private final Target target;
  private final Wire wire;
  private final Known known;
  private final Plain plain;
  private final Tally tally;
  private final Map<Endpoint, String> users = new ConcurrentHashMap<>();
  private final ConcurrentLinkedQueue<UUID> refused = new ConcurrentLinkedQueue<>();

  private final Set<String> done = ConcurrentHashMap.newKeySet();

  EndpointFuzz(Target target, Duration patience, Known known, Plain plain, Tally tally) {
    this.target = target;
    this.wire = new Wire(target.host(), patience);
    this.known = known;
    this.plain = plain;
    this.tally = tally;
  }

  /** Names of the endpoints that did at least once what they were asked for. */
  Set<String> done() {
    return Set.copyOf(done);
  }

  private record Attempt(Endpoint endpoint, Twist twist) {}

  /** Ids of the commands that were refused. */
  List<UUID> refused() {
    return List.copyOf(refused);
  }

  /**
   * @return how many passes over all were whole
   */
  int run(List<Endpoint> endpoints, List<Twist> twists, long seed, Instant until) {
    endpoints.forEach(endpoint -> users.put(endpoint, userOf(endpoint, seed)));
    List<Attempt> attempts = new ArrayList<>();
    for (Endpoint endpoint : endpoints) {
      twists.stream()
          .filter(twist -> twist.fits().test(endpoint))
          .forEach(twist -> attempts.add(new Attempt(endpoint, twist)));
    }
    int passes = 0;
    while (Instant.now().isBefore(until)) {
      Collections.shuffle(attempts, new Random(seed + passes));
      if (pass(attempts, seed + 1_000_003L * passes, until)) {
        passes++;
      }
    }
    return passes;
  }

  /** True when the time sufficed for all. */
  private boolean pass(List<Attempt> attempts, long seed, Instant until) {
    AtomicLong next = new AtomicLong();
    try (ExecutorService hands = Executors.newFixedThreadPool(AT_ONCE)) {
      for (int hand = 0; hand < AT_ONCE; hand++) {
        hands.submit(
            () -> {
              long i = next.getAndIncrement();
              while (i < attempts.size() && Instant.now().isBefore(until)) {
                attempt(attempts.get((int) i), new Random(seed + i));
                i = next.getAndIncrement();
              }
            });
      }
    }
    return next.get() >= attempts.size();
  }

  private void attempt(Attempt attempt, Random random) {
    Endpoint endpoint = attempt.endpoint();
    Draft draft = attempt.twist().of(endpoint, plain, random);
    Call call = draft.call(port(endpoint), Target.login(users.get(endpoint)));
    try {
      Answer answer = wire.send(call);
      tally.count(endpoint.service() + " " + kind(endpoint), answer.status());
      Judge.wrong(answer, endpoint.isApi(), draft.broken(), call)
          .ifPresent(what -> violated(attempt, what, call));
      if (answer.refused()) {
        refused.add(draft.commandId());
      } else {
        done.add(endpoint.name());
        learn(answer);
      }
    } catch (IOException e) {
      violated(attempt, "out of reach", call);
    }
  }

  /** A session that was just opened can be gone on with. */
  private void learn(Answer answer) {
    if (answer.type().equals("application/json") && answer.body().length < MOST_TO_LEARN) {
      try {
        known.learn("", JSON.readTree(answer.body()));
      } catch (IOException e) {
        // That it is no JSON is not for here.
      }
    }
  }

  private void violated(Attempt attempt, String what, Call call) {
    tally.violated(
        new Tally.Violation(
            attempt.endpoint().name(), what, attempt.twist().name(), call.repeat()));
  }

  /** The first of the demo's people who may do it; one of them where nobody may. */
  private String userOf(Endpoint endpoint, long seed) {
    for (String user : endpoint.open() ? List.of("") : Target.USERS) {
      Draft draft = plain.of(endpoint, new Random(seed));
      try {
        int status = wire.send(draft.call(port(endpoint), Target.login(user))).status();
        if (status != 403 && status != 401) {
          return user;
        }
      } catch (IOException e) {
        return user;
      }
    }
    return Target.USERS.getFirst();
  }

  /**
   * Links are counted by address, so their service is asked without the gateway, which would tell.
   */
  private int port(Endpoint endpoint) {
    return target.ports().gateway();
  }

  private static String kind(Endpoint endpoint) {
    return endpoint.kind().name().toLowerCase(java.util.Locale.ROOT);
  }
}
