package org.tapeline.fitting.fieldapp;

import com.fasterxml.jackson.core.JsonProcessingException;
import io.quarkus.runtime.Startup;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.tapeline.fitting.protocol.Check;
import org.tapeline.fitting.protocol.Protocols;
import org.tapeline.fitting.protocol.Remedy;
import org.tapeline.journal.EventJson;

/**
 * The files that a phone keeps. Their hash is the build: when one byte of one file changes, the
 * phones fetch all of them anew and never mix two builds.
 */
@Startup
@ApplicationScoped
public class Shell {
  private static final String ROOT = "/META-INF/resources";
  private static final String ADDRESS = "/fitting";

  /** Not ours to hash; a phone that is asked for it fetches the newest behind the scenes. */
  private static final String SHARED_STYLE = "/assets/tapeline.css";

  private final String serviceWorker;

  Shell(Protocols protocols) {
    MessageDigest hash = sha256();
    List<String> kept = new ArrayList<>(List.of(SHARED_STYLE));
    files(protocols)
        .forEach(
            file ->
                content(ROOT + file)
                    .ifPresent(
                        bytes -> {
                          hash.update(bytes);
                          kept.add(ADDRESS + file);
                        }));
    String source = new String(must("/fieldapp/service-worker.js"), StandardCharsets.UTF_8);
    hash.update(source.getBytes(StandardCharsets.UTF_8));
    String build = HexFormat.of().formatHex(hash.digest(), 0, 8);
    this.serviceWorker =
        "const BUILD = '" + build + "';\nconst FILES = " + json(kept) + ";\n" + source;
  }

  String serviceWorker() {
    return serviceWorker;
  }

  /**
   * What is in the list, and a drawing for each check and each piece of care that has one. {@code
   * rules.js} is made when the service is packaged.
   */
  private static Stream<String> files(Protocols protocols) {
    Stream<String> listed =
        new String(must("/fieldapp/files.txt"), StandardCharsets.UTF_8)
            .lines()
            .map(name -> "/field/" + name);
    Stream<String> drawn =
        Stream.concat(
            protocols.inForce().checks().stream().map(Check::id),
            protocols.inForce().remedies().stream()
                .flatMap(r -> r.care().stream())
                .map(Remedy.Care::id));
    return Stream.concat(listed, drawn.distinct().map(id -> "/drawings/" + id + ".svg"));
  }

  private static Optional<byte[]> content(String resource) {
    try (InputStream in = Shell.class.getResourceAsStream(resource)) {
      return in == null ? Optional.empty() : Optional.of(in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static byte[] must(String resource) {
    return content(resource)
        .orElseThrow(() -> new IllegalStateException("Not in the build: " + resource));
  }

  private static String json(List<String> files) {
    try {
      return EventJson.MAPPER.writeValueAsString(files);
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("Every Java runtime has SHA-256", e);
    }
  }
}
