package org.tapeline.proof.audit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.sun.net.httpserver.HttpServer;
import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The list of what of others is in a part")
class AuditTest {
  @TempDir Path folder;

  @Test
  @DisplayName("says nothing of releases under allowed licences, one version of each")
  void sound() throws IOException {
    Audit audit = audit(component("a", "1.0", "MIT"), component("b", "2.1", "Apache-2.0"));
    assertThat(audit.wrong()).isEmpty();
    assertThat(audit.table())
        .contains("| org.example:a | 1.0 | MIT | part |")
        .noneMatch(line -> line.contains("org.tapeline"));
  }

  @Test
  @DisplayName(
      "tells of a licence that is not allowed, of none at all, and takes any that is offered")
  void licences() throws IOException {
    Audit audit =
        audit(
            component("a", "1.0", "AGPL-3.0"),
            "{\"group\":\"org.example\",\"name\":\"b\",\"version\":\"1\"}",
            component("looked-up", "1", "by its web page"),
            expression("either", "GPL-2.0 OR MIT"),
            expression("both", "GPL-2.0 AND MIT"));
    assertThat(audit.wrong())
        .hasSize(3)
        .anyMatch(line -> line.startsWith("org.example:a is under AGPL-3.0"))
        .anyMatch(line -> line.startsWith("org.example:b says no licence"))
        .anyMatch(line -> line.startsWith("org.example:both is under GPL-2.0 AND MIT"));
  }

  @Test
  @DisplayName("tells of what is no release, and of two versions of one artifact")
  void versions() throws IOException {
    Audit audit =
        audit(
            component("a", "1.0-SNAPSHOT", "MIT"),
            component("b", "1.0", "MIT"),
            component("b", "1.1", "MIT"));
    assertThat(audit.wrong())
        .containsExactlyInAnyOrder(
            "org.example:a 1.0-SNAPSHOT is no release.", "part has org.example:b twice: 1.0, 1.1");
  }

  @Test
  @DisplayName("is not taken for sound when there is nothing in it")
  void empty() {
    assertThatThrownBy(this::audit).hasMessageContaining("nothing of others");
  }

  @Test
  @DisplayName("is held against a database of vulnerabilities, whose silence is no good news")
  void vulnerabilities() throws IOException {
    List<ThirdParty> two =
        List.of(
            new ThirdParty("part", "org.example:a", "1.0", List.of()),
            new ThirdParty("part", "org.example:b", "1.0", List.of()));
    String answer = "{\"results\":[{},{\"vulns\":[{\"id\":\"X-1\"},{\"id\":\"X-2\"}]}]}";
    assertThat(asked(answer, two)).containsExactly("org.example:b 1.0: X-1, X-2");
    assertThatThrownBy(() -> asked("{\"results\":[{}]}", two))
        .isInstanceOf(IOException.class)
        .hasMessage("It was asked of 2 and told of 1");
  }

  private static List<String> asked(String answer, List<ThirdParty> artifacts) throws IOException {
    HttpServer server =
        HttpServer.create(new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 0);
    server.createContext(
        "/v1/querybatch",
        exchange -> {
          byte[] body = answer.getBytes(StandardCharsets.UTF_8);
          exchange.sendResponseHeaders(200, body.length);
          exchange.getResponseBody().write(body);
          exchange.close();
        });
    server.start();
    try {
      String address = "http://127.0.0.1:" + server.getAddress().getPort();
      return new Vulnerabilities(URI.create(address)).of(artifacts);
    } finally {
      server.stop(0);
    }
  }

  private Audit audit(String... components) throws IOException {
    Path list = folder.resolve("bom.json");
    String ours = "{\"group\":\"org.tapeline\",\"name\":\"event-journal\",\"version\":\"1\"}";
    String all = String.join(",", List.of(components));
    Files.writeString(list, "{\"components\":[" + ours + (all.isEmpty() ? "" : "," + all) + "]}");
    Path allowed = folder.resolve("licences.txt");
    Files.writeString(
        allowed, "MIT\nApache-2.0 # as most\norg.example:looked-up = MIT # by its web page\n");
    Audit audit = new Audit(Licences.from(allowed));
    audit.take(ThirdParty.of("part", list));
    return audit;
  }

  private static String component(String name, String version, String licence) {
    return """
    {"group":"org.example","name":"%s","version":"%s",\
    "licenses":[{"license":{"id":"%s"}}]}\
    """
        .formatted(name, version, licence);
  }

  private static String expression(String name, String licences) {
    return """
    {"group":"org.example","name":"%s","version":"1","licenses":[{"expression":"%s"}]}\
    """
        .formatted(name, licences);
  }
}
