package org.tapeline.testkit;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.UUID;
import org.postgresql.ds.PGSimpleDataSource;

/** A running stack that is timed: its gateway and its databases. */
public final class BenchStack {
  private static final String LOGIN =
      "Basic "
          + Base64.getEncoder()
              .encodeToString("manager:larkfield".getBytes(StandardCharsets.UTF_8));

  private final HttpClient http = HttpClient.newHttpClient();
  private final int gateway;

  /**
   * @param gateway its port; those of the servers follow from it
   */
  public BenchStack(int gateway) {
    this.gateway = gateway;
  }

  public PGSimpleDataSource database(String service) {
    PGSimpleDataSource source = new PGSimpleDataSource();
    source.setUrl("jdbc:postgresql://127.0.0.1:" + (gateway + 7000) + "/" + service);
    source.setUser("tapeline");
    source.setPassword("tapeline");
    return source;
  }

  /**
   * Sends a command with an id of its own, as the equipment manager.
   *
   * @throws IOException also when it is refused
   */
  public HttpResponse<String> post(String path, String type, String body)
      throws IOException, InterruptedException {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + gateway + path))
            .header("Authorization", LOGIN)
            .header("Accept", "application/json")
            .header("Idempotency-Key", UUID.randomUUID().toString())
            .header("Content-Type", type)
            .POST(HttpRequest.BodyPublishers.ofString(body))
            .build();
    HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
    if (answer.statusCode() / 100 != 2) {
      throw new IOException(path + ": " + answer.statusCode() + " " + answer.body());
    }
    return answer;
  }
}
