package org.tapeline.proof.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.tapeline.proof.fuzz.endpoint.ApiDocument;
import org.tapeline.proof.fuzz.endpoint.Endpoint;
import org.tapeline.proof.fuzz.endpoint.Known;
import org.tapeline.proof.fuzz.endpoint.Plain;
import org.tapeline.proof.fuzz.endpoint.Signing;
import org.tapeline.proof.fuzz.endpoint.Twist;

/** Every endpoint of the four OpenAPI documents with every twist. */
final class EndpointTrial {
  private final Target target;
  private final FuzzOptions options;
  private final Tally tally;
  private final Told told;
  private final Behind behind;

  EndpointTrial(Target target, FuzzOptions options, Tally tally, Told told, Behind behind) {
    this.target = target;
    this.options = options;
    this.tally = tally;
    this.told = told;
    this.behind = behind;
  }

  void run() throws IOException, SQLException {
    List<Endpoint> endpoints = endpoints();
    Known known = new Harvest(target).of(endpoints);
    List<Twist> twists = Twist.all(known);
    Plain plain = new Plain(known, DemoCsv.of(options.root()), signing());
    EndpointFuzz fuzz = new EndpointFuzz(target, options.patience(), known, plain, tally);
    Instant until = Instant.now().plus(Duration.ofSeconds(options.seconds()));
    int passes = fuzz.run(endpoints, twists, options.seed(), until);
    told.line(
        "endpoints %d, twists %d, whole passes %d, seed %d",
        endpoints.size(), twists.size(), passes, options.seed());
    told.line(
        "endpoints that did at least once what they were asked for %d of %d",
        fuzz.done().size(), endpoints.size());
    if (options.slow()) {
      endpoints.stream()
          .map(Endpoint::name)
          .filter(name -> !fuzz.done().contains(name))
          .forEach(name -> told.line("always refused: %s", name));
    }
    behind.acceptedIsReadable();
    effects(fuzz.refused());
  }

  private List<Endpoint> endpoints() throws IOException {
    List<Endpoint> endpoints = new ArrayList<>();
    for (String service : Target.SERVICES) {
      endpoints.addAll(new ApiDocument(service, target.description(service)).endpoints());
    }
    return endpoints;
  }

  private Optional<Signing> signing() throws IOException {
    Path key = options.data().resolve("secrets/text");
    return Files.exists(key)
        ? Optional.of(new Signing(Files.readString(key).strip()))
        : Optional.empty();
  }

  private void effects(List<UUID> refused) throws SQLException {
    List<String> effects = new NoEffect(target.ports().postgres()).of(refused);
    told.line(
        "refused commands %d, events that go back to them %d", refused.size(), effects.size());
    for (String effect : effects) {
      tally.violated(
          new Tally.Violation("journal", "an effect though refused", "a refused command", effect));
    }
  }
}
