package org.tapeline.stack.gateway;

import io.vertx.core.buffer.Buffer;
import io.vertx.ext.web.Router;
import io.vertx.ext.web.RoutingContext;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The shared stylesheet and scripts. A browser asks each time whether its copy is still the newest:
 * the addresses carry no version, and a page must never meet last month's script.
 */
final class Assets {
  private static final Map<String, String> FILES =
      Map.of(
          "tapeline.css", "/assets/tapeline.css",
          "tapeline.svg", "/assets/tapeline.svg",
          "tables.js", "/assets/tables.js",
          "find.js", "/assets/find.js",
          "htmx.min.js", "/META-INF/resources/webjars/htmx.org/2.0.10/dist/htmx.min.js",
          "htmx-ext-sse.js", "/META-INF/resources/webjars/htmx-ext-sse/2.2.2/sse.js");

  private final Map<String, Asset> assets = new LinkedHashMap<>();

  private record Asset(Buffer content, String type, String tag) {}

  Assets() {
    FILES.forEach((name, resource) -> assets.put(name, load(name, resource)));
  }

  private static Asset load(String name, String resource) {
    try (InputStream in = Assets.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("Not in the build: " + resource);
      }
      byte[] content = in.readAllBytes();
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(content);
      String tag = '"' + HexFormat.of().formatHex(hash, 0, 8) + '"';
      return new Asset(Buffer.buffer(content), type(name), tag);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java runtime has SHA-256", e);
    }
  }

  private static String type(String name) {
    return switch (name.substring(name.lastIndexOf('.') + 1)) {
      case "css" -> "text/css; charset=utf-8";
      case "js" -> "text/javascript; charset=utf-8";
      case "svg" -> "image/svg+xml";
      default -> throw new IllegalArgumentException("No type for " + name);
    };
  }

  void mount(Router router) {
    router.get("/assets/:name").handler(this::send);
  }

  private void send(RoutingContext context) {
    Asset asset = assets.get(context.pathParam("name"));
    if (asset == null) {
      context.next();
      return;
    }
    context.response().putHeader("ETag", asset.tag).putHeader("Cache-Control", "no-cache");
    if (asset.tag.equals(context.request().getHeader("If-None-Match"))) {
      context.response().setStatusCode(304).end();
    } else {
      context.response().putHeader("Content-Type", asset.type).end(asset.content);
    }
  }
}
