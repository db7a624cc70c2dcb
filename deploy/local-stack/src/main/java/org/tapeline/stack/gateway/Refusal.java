package org.tapeline.stack.gateway;

import io.netty.handler.codec.http.TooLongHttpHeaderException;
import io.netty.handler.codec.http.TooLongHttpLineException;
import io.vertx.core.Future;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.json.JsonObject;
import java.util.Map;

/** What is not even a request is refused in words: by a page to browsers, else by a problem. */
final class Refusal {
  private final Pages pages;

  Refusal(Pages pages) {
    this.pages = pages;
  }

  /** The connection is of no use any more: where the next request would begin is not known. */
  void unreadable(HttpServerRequest request) {
    Throwable cause = request.decoderResult().cause();
    int status =
        switch (cause) {
          case TooLongHttpLineException line -> 414;
          case TooLongHttpHeaderException headers -> 431;
          case null, default -> 400;
        };
    request.response().putHeader("Connection", "close");
    refuse(request, status).onComplete(sent -> request.connection().close());
  }

  Future<Void> refuse(HttpServerRequest request, int status) {
    Said said = said(request.getHeader("Accept"), status);
    return request
        .response()
        .setStatusCode(status)
        .putHeader("Cache-Control", "no-store")
        .putHeader("Content-Type", said.type())
        .end(said.text());
  }

  /** What is said of a status, and as what. */
  record Said(String type, String text) {}

  /**
   * @param accept the caller's header; {@code null} when there is none
   */
  Said said(String accept, int status) {
    String detail =
        switch (status) {
          case 413 -> "That is more than is taken at once. Send it in parts.";
          case 414 -> "The address is too long. Send what it says in the body.";
          case 431 ->
              "The headers are too long. Delete the cookies of this site and sign in again.";
          default -> "The address or a header is not written as HTTP has it. Correct it.";
        };
    if (accept != null && accept.contains("text/html")) {
      return new Said(
          "text/html; charset=utf-8", pages.render("refused", Map.of("detail", detail)));
    }
    return new Said(
        "application/problem+json",
        new JsonObject()
            .put("type", "https://tapeline.org/problems/http-" + status)
            .put("title", "Not understood")
            .put("status", status)
            .put("detail", detail)
            .encode());
  }
}
