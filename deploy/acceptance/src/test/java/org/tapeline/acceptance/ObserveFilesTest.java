package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("For whoever watches the services")
class ObserveFilesTest {
  private static final Path FILES = Tapeline.ROOT.resolve("deploy/observe");
  private static final Pattern METRIC =
      Pattern.compile("\\b(tapeline|http_server|jvm|process)_[a-z_]+\\b");
  private static final Pattern ALERT = Pattern.compile("(?m)^ +- alert: (\\w+)$");

  @Test
  @DisplayName("every metric of the dashboard and of the alerts is one that a service has")
  void metrics() throws IOException {
    Set<String> dashboard = new TreeSet<>();
    JsonNode panels =
        Tapeline.json(Files.readString(FILES.resolve("dashboard.json"))).path("panels");
    panels.findValuesAsText("expr").forEach(expression -> dashboard.addAll(metrics(expression)));
    Set<String> alerts = metrics(Files.readString(FILES.resolve("alerts.yml")));
    assertThat(dashboard).hasSizeGreaterThan(20);
    assertThat(alerts).hasSizeGreaterThan(10);

    Patience.soon()
        .untilAsserted(() -> assertThat(scraped()).containsAll(dashboard).containsAll(alerts));
  }

  @Test
  @DisplayName("every metric that the guide names is one that a service has")
  void guide() throws IOException {
    Set<String> told = metrics(Files.readString(Tapeline.ROOT.resolve("docs/operations.md")));
    told.removeIf(name -> name.endsWith("_"));
    Patience.soon()
        .untilAsserted(
            () ->
                assertThat(scraped().stream().map(ObserveFilesTest::family).toList())
                    .containsAll(told.stream().map(ObserveFilesTest::family).toList()));
  }

  @Test
  @DisplayName("the guide says of every alert what to do, and of no other")
  void whatToDo() throws IOException {
    String guide = Files.readString(Tapeline.ROOT.resolve("docs/operations.md"));
    List<String> told =
        Pattern.compile("(?m)^### (\\w+)$").matcher(guide).results().map(m -> m.group(1)).toList();
    List<String> alerts =
        ALERT
            .matcher(Files.readString(FILES.resolve("alerts.yml")))
            .results()
            .map(m -> m.group(1))
            .toList();
    assertThat(told).isEqualTo(alerts);
  }

  @Test
  @DisplayName("the metrics are told where the services run, and not at the gateway")
  void notInPublic() {
    assertThat(Tapeline.status("manager", "/fitting/q/metrics")).isEqualTo(404);
    assertThat(scraped()).contains("tapeline_inbox_picture_age_seconds");
  }

  private static Set<String> metrics(String text) {
    return METRIC.matcher(text).results().map(MatchResult::group).collect(Collectors.toSet());
  }

  private static String family(String metric) {
    return metric.replaceFirst("_(count|sum|max|bucket)$", "");
  }

  /** The names of all metrics of the four services. */
  private static Set<String> scraped() {
    return Stream.of("sizing", "fitting", "inventory", "notify")
        .flatMap(service -> scrape(service).lines())
        .filter(line -> !line.startsWith("#"))
        .map(line -> line.split("[{ ]", 2)[0])
        .collect(Collectors.toSet());
  }

  private static String scrape(String service) {
    try (HttpClient http = HttpClient.newHttpClient()) {
      URI metrics = URI.create(Tapeline.serviceAddress(service) + "/q/metrics");
      return http.send(
              HttpRequest.newBuilder(metrics).build(), HttpResponse.BodyHandlers.ofString())
          .body();
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
