package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.net.InetAddress;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import no.nav.security.mock.oauth2.MockOAuth2Server;
import no.nav.security.mock.oauth2.OAuth2Config;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.acceptance.Chromium.Screen;

/** Signing in at an identity provider, with the settings that {@code deploy} has an example of. */
class OpenIdConnectTest {
  private static final String ISSUER = "association";
  private static final MockOAuth2Server PROVIDER =
      new MockOAuth2Server(OAuth2Config.Companion.fromJson("{\"interactiveLogin\": true}"));
  private static LocalRun tapeline;

  @BeforeAll
  static void start() throws IOException {
    PROVIDER.start(InetAddress.getLoopbackAddress(), 0);
    Path settings = Tapeline.ROOT.resolve("deploy/acceptance/target/openid-connect.properties");
    String example = Files.readString(Tapeline.ROOT.resolve("deploy/openid-connect.properties"));
    Files.writeString(
        settings,
        example
            .replace("https://id.example.org/realms/association", issuer())
            .replace("put-the-secret-of-the-client-here", "a secret of this test")
            .replace("put-32-or-more-random-characters-here", "0123456789abcdef0123456789abcdef"));
    tapeline =
        LocalRun.start(
            "data-openid", Map.of("TAPELINE_USERS", settings.toString()), "--fresh", "--empty");
  }

  @AfterAll
  static void stop() {
    tapeline.close();
    PROVIDER.shutdown();
  }

  private static String issuer() {
    String url = PROVIDER.issuerUrl(ISSUER).toString();
    return url.replace("127.0.0.1", "localhost");
  }

  @Test
  @DisplayName("One log-in at the provider opens the pages of all four services, by roles")
  void oneLogInForAllPages() {
    Page page = Chromium.window(Screen.DESK, tapeline.address());
    page.navigate("/sizing/players");
    assertThat(page.url()).startsWith(issuer());
    page.locator("[name=username]").fill("pat.keeper");
    page.locator("[name=claims]")
        .fill("{\"preferred_username\":\"pat.keeper\",\"groups\":[\"equipment-manager\"]}");
    page.locator("[type=submit]").click();
    page.waitForURL(url -> url.startsWith(tapeline.address() + "/sizing/players"));
    for (String path :
        List.of("/sizing/players", "/fitting/players", "/inventory/stock", "/notify/notices")) {
      assertThat(page.navigate(path).status()).as(path).isEqualTo(200);
      assertThat(page.url()).isEqualTo(tapeline.address() + path);
      assertThat(page.locator("header .meta").innerText()).isEqualTo("pat.keeper");
    }
    everyPageWorksWithNothingInIt(page);
    page.navigate("/sign-out");
    page.navigate("/inventory/stock");
    assertThat(page.url()).as("signed out").startsWith(issuer());
  }

  /** This Tapeline was started empty. */
  private static void everyPageWorksWithNothingInIt(Page page) {
    for (String path :
        List.of(
            "/sizing/station",
            "/sizing/corrections",
            "/sizing/due",
            "/sizing/measurers",
            "/sizing/size-mix",
            "/sizing/charts",
            "/sizing/charts/drafts",
            "/fitting/fit-days",
            "/fitting/sideline",
            "/inventory/helmets",
            "/inventory/restock")) {
      assertThat(page.navigate(path).status()).as(path).isEqualTo(200);
    }
  }

  @Test
  @DisplayName("A program's token opens what its roles allow, and a token of somebody else nothing")
  void bearerTokens() throws Exception {
    String depot = token(ISSUER, "warehouse");
    assertThat(status(depot, "/inventory/api/restock")).isEqualTo(200);
    assertThat(status(depot, "/notify/api/notices")).isEqualTo(403);
    assertThat(status(token("somebody-else", "warehouse"), "/inventory/api/restock"))
        .isEqualTo(401);
  }

  private static String token(String issuer, String role) {
    return PROVIDER
        .issueToken(issuer, "depot.program", "tapeline", Map.of("groups", List.of(role)))
        .serialize();
  }

  private static int status(String token, String path) throws Exception {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(tapeline.address() + path))
            .header("Authorization", "Bearer " + token)
            .build();
    return HttpClient.newHttpClient()
        .send(request, HttpResponse.BodyHandlers.discarding())
        .statusCode();
  }
}
