package org.tapeline.proof.audit;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.stream.StreamSupport;

/** Asks a database of known vulnerabilities, in the batch format of OSV (its API, version 1). */
final class Vulnerabilities {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Duration PATIENCE = Duration.ofSeconds(20);
  private final URI server;

  Vulnerabilities(URI server) {
    this.server = server;
  }

  /**
   * A sentence for each artifact with known vulnerabilities.
   *
   * @throws IOException when it does not answer, or not as it should
   */
  List<String> of(Collection<ThirdParty> artifacts) throws IOException {
    List<ThirdParty> asked = List.copyOf(artifacts);
    ObjectNode question = JSON.createObjectNode();
    asked.forEach(
        a -> {
          ObjectNode query = question.withArray("/queries").addObject();
          query.put("version", a.version());
          query.putObject("package").put("ecosystem", "Maven").put("name", a.artifact());
        });
    JsonNode results = ask(question.toString()).path("results");
    if (results.size() != asked.size()) {
      throw new IOException("It was asked of " + asked.size() + " and told of " + results.size());
    }
    List<String> known = new ArrayList<>();
    for (int i = 0; i < asked.size(); i++) {
      List<String> ids =
          StreamSupport.stream(results.path(i).path("vulns").spliterator(), false)
              .map(v -> v.path("id").asText())
              .toList();
      if (!ids.isEmpty()) {
        ThirdParty a = asked.get(i);
        known.add(a.artifact() + " " + a.version() + ": " + String.join(", ", ids));
      }
    }
    return known;
  }

  private JsonNode ask(String question) throws IOException {
    HttpRequest request =
        HttpRequest.newBuilder(server.resolve("/v1/querybatch"))
            .timeout(PATIENCE)
            .header("Content-Type", "application/json")
            .POST(HttpRequest.BodyPublishers.ofString(question))
            .build();
    try (HttpClient http = HttpClient.newBuilder().connectTimeout(PATIENCE).build()) {
      HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
      if (answer.statusCode() != 200) {
        throw new IOException("It answered " + answer.statusCode());
      }
      return JSON.readTree(answer.body());
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IOException("Interrupted", e);
    }
  }
}
