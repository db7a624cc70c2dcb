package org.tapeline.proof.faults.season;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.BooleanSupplier;
import org.tapeline.proof.faults.process.Part;
import org.tapeline.proof.faults.process.StackPlace;
import org.tapeline.proof.faults.season.Ledger.Entry;
import org.tapeline.proof.faults.season.Ledger.Outcome;

/**
 * The way into the stack. A command is sent until it is known how it ended, always under the same
 * id, as every client is told to do; the ledger has the answer. Where a service runs twice, some go
 * to its other copy.
 */
public final class Gate {
  private static final ObjectMapper JSON = new ObjectMapper();
  private static final Duration ANSWER = Duration.ofSeconds(8);
  private static final Duration PAUSE = Duration.ofMillis(400);
  private static final String PASSWORD = "larkfield";

  private final StackPlace place;
  private final Ledger ledger;
  private final BooleanSupplier givenUp;
  private final HttpClient http = HttpClient.newHttpClient();
  private final Map<Part, Integer> copies = new ConcurrentHashMap<>();

  /**
   * @param givenUp says that what is not known by now stays unknown
   */
  public Gate(StackPlace place, Ledger ledger, BooleanSupplier givenUp) {
    this.place = place;
    this.ledger = ledger;
    this.givenUp = givenUp;
  }

  /** Nobody can answer just now; whoever only wanted to look does something else. */
  public static final class Away extends Exception {
    private static final long serialVersionUID = 1L;

    Away(String message) {
      super(message);
    }
  }

  /** From now on some of what is for the service goes to its copy at that port. */
  public void alsoAt(Part service, int port) {
    copies.put(service, port);
  }

  public void onlyThroughGateway(Part service) {
    copies.remove(service);
  }

  /** Sends until the answer is known, and enters it. */
  Entry send(Command command, Random random) {
    ledger.begun(command);
    for (int sends = 1; ; sends++) {
      Optional<HttpResponse<String>> answer = once(command, random);
      if (answer.isPresent() && known(answer.get().statusCode())) {
        return entered(command, answer.get(), sends);
      }
      if (givenUp.getAsBoolean()) {
        Entry unknown = new Entry(command, Outcome.UNKNOWN, 0, "", sends, Instant.now());
        ledger.enter(unknown);
        return unknown;
      }
      StackPlace.rest(PAUSE);
    }
  }

  /** A refusal is an answer, a failure is none: it says nothing about what was done. */
  private static boolean known(int status) {
    return status < 500 && status != 408 && status != 429;
  }

  private Entry entered(Command command, HttpResponse<String> answer, int sends) {
    Outcome outcome = answer.statusCode() < 400 ? Outcome.ACCEPTED : Outcome.REFUSED;
    Entry entry =
        new Entry(command, outcome, answer.statusCode(), answer.body(), sends, Instant.now());
    ledger.enter(entry);
    return entry;
  }

  private Optional<HttpResponse<String>> once(Command command, Random random) {
    Integer copy = copies.get(command.service());
    String base =
        copy != null && random.nextBoolean() ? "http://127.0.0.1:" + copy : place.gateway();
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(base + command.address()))
            .timeout(ANSWER)
            .header("Content-Type", command.type())
            .header("Idempotency-Key", command.id().toString())
            .POST(HttpRequest.BodyPublishers.ofString(command.body()));
    command.user().ifPresent(user -> signIn(request, user));
    command.headers().forEach(request::header);
    try {
      return Optional.of(http.send(request.build(), HttpResponse.BodyHandlers.ofString()));
    } catch (IOException e) {
      return Optional.empty();
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
  }

  private static void signIn(HttpRequest.Builder request, String user) {
    byte[] login = (user + ":" + PASSWORD).getBytes(StandardCharsets.UTF_8);
    request.header("Authorization", "Basic " + Base64.getEncoder().encodeToString(login));
    request.header("Accept", "application/json");
  }

  /** What staff see. */
  public JsonNode look(String user, String address) throws Away {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(place.gateway() + address)).timeout(ANSWER);
    signIn(request, user);
    return json(text(request.build()));
  }

  /** A page behind a link. */
  String page(String address) throws Away {
    URI uri = URI.create(place.gateway() + address);
    return text(HttpRequest.newBuilder(uri).timeout(ANSWER).header("Accept", "text/html").build());
  }

  private String text(HttpRequest request) throws Away {
    try {
      HttpResponse<String> answer = http.send(request, HttpResponse.BodyHandlers.ofString());
      if (answer.statusCode() != 200) {
        throw new Away(request.uri() + " answered " + answer.statusCode());
      }
      return answer.body();
    } catch (IOException e) {
      throw new Away(request.uri() + ": " + e);
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
  }

  private static IllegalStateException interrupted(InterruptedException e) {
    Thread.currentThread().interrupt();
    return new IllegalStateException("Interrupted", e);
  }

  static JsonNode json(String text) {
    try {
      return JSON.readTree(text);
    } catch (IOException e) {
      throw new IllegalStateException("Not JSON: " + text, e);
    }
  }

  static String json(Map<String, Object> body) {
    return JSON.valueToTree(body).toString();
  }
}
