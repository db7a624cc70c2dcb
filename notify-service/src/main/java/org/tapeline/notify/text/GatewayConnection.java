package org.tapeline.notify.text;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.ConnectException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.net.http.HttpTimeoutException;
import java.time.Clock;
import java.time.Instant;
import java.util.Optional;
import org.tapeline.journal.EventJson;
import org.tapeline.notify.channel.Channel;
import org.tapeline.notify.channel.Outgoing;
import org.tapeline.notify.channel.SendOutcome;

/** Sends text messages to the gateway, one at a time; redirects are not followed. */
final class GatewayConnection implements Channel.Connection {
  private final TextSettings settings;
  private final Clock clock;
  private final HttpClient http;

  GatewayConnection(TextSettings settings, Clock clock) {
    this.settings = settings;
    this.clock = clock;
    this.http =
        HttpClient.newBuilder()
            .version(HttpClient.Version.HTTP_1_1)
            .connectTimeout(settings.timeout())
            .build();
  }

  @Override
  public SendOutcome send(Outgoing message) {
    return TextBody.of(message.letter())
        .map(words -> send(message, words))
        .orElseGet(() -> new SendOutcome.MessageRefused("too-long"));
  }

  private SendOutcome send(Outgoing message, String words) {
    Instant now = clock.instant();
    try {
      HttpResponse<String> answer =
          http.send(
              TextRequest.of(settings, message, words, now), HttpResponse.BodyHandlers.ofString());
      return GatewayAnswers.of(
          answer.statusCode(), id(answer.body()), answer.headers().firstValue("Retry-After"), now);
    } catch (ConnectException e) {
      return new SendOutcome.Down("connect-failed");
    } catch (HttpTimeoutException e) {
      return new SendOutcome.Down("timed-out");
    } catch (IOException e) {
      return new SendOutcome.Down("connection-lost");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return new SendOutcome.Down("interrupted");
    }
  }

  private Optional<String> id(String body) {
    try {
      JsonNode id = EventJson.MAPPER.readTree(body).path(settings.fields().id());
      return Optional.of(id.asText()).filter(text -> text.matches("[\\x21-\\x7e]{1,200}"));
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  @Override
  public void close() {
    http.close();
  }
}
