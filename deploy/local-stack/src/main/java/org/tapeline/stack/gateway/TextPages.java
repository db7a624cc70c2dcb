package org.tapeline.stack.gateway;

import io.vertx.core.json.DecodeException;
import io.vertx.core.json.JsonObject;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import io.vertx.ext.web.handler.BodyHandler;
import java.io.IOException;
import java.util.Map;
import org.tapeline.stack.mailbox.TextBox;

/**
 * Takes text messages as a gateway of an operator would, and shows them. Only in the local stack.
 */
final class TextPages {
  private static final int LARGEST = 16 * 1024;

  private final TextBox texts;
  private final Pages pages;

  TextPages(TextBox texts, Pages pages) {
    this.texts = texts;
    this.pages = pages;
  }

  void mount(Router router) {
    router.get("/mailbox/texts").blockingHandler(this::list);
    router
        .post("/mailbox/texts")
        .handler(BodyHandler.create(false).setBodyLimit(LARGEST))
        .blockingHandler(this::take);
  }

  private void list(RoutingContext context) {
    try {
      pages.send(context, "texts", Map.of("texts", texts.all()));
    } catch (IOException e) {
      context.fail(e);
    }
  }

  private void take(RoutingContext context) {
    String key = context.request().getHeader("Idempotency-Key");
    try {
      JsonObject message = context.body().asJsonObject();
      boolean stored =
          key != null
              && message != null
              && texts.store(key, message.getString("to", ""), message.getString("body", ""));
      context
          .response()
          .setStatusCode(stored ? 202 : 400)
          .putHeader("Content-Type", "application/json")
          .end(stored ? new JsonObject().put("id", key).encode() : "{}");
    } catch (DecodeException e) {
      context.response().setStatusCode(400).end();
    } catch (IOException e) {
      context.fail(e);
    }
  }
}
