package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What can be done with a browser that somebody is, or is about to be, signed in with. */
@DisplayName("A session")
class SessionsTest {
  private static final String PAGE = "/sizing/players";
  private static final String STRANGER = "https://shop.example.net";

  @Test
  @DisplayName("is a cookie that no script reads and no other site's page sends")
  void cookie() {
    Raw.Answer signedIn = Raw.signIn("manager", Map.of());
    assertThat(signedIn.session()).isNotEmpty();
    assertThat(signedIn.cookies())
        .filteredOn(cookie -> cookie.startsWith(Raw.SESSION))
        .allSatisfy(
            cookie ->
                assertThat(cookie).containsIgnoringCase("HttpOnly").contains("SameSite=Strict"));
    assertThat(opens(signedIn.session())).isTrue();
  }

  @Test
  @DisplayName("that somebody chose before the sign-in is not the one that is signed in")
  void fixation() {
    String chosen = Raw.SESSION + "chosen-by-somebody-else";
    Raw.Answer signedIn = Raw.signIn("manager", Map.of("Cookie", chosen));
    assertThat(signedIn.session()).isNotEmpty().isNotEqualTo(chosen);
    assertThat(opens(chosen)).isFalse();

    String fitters = Raw.signIn("fitter.north", Map.of()).session();
    String managers = Raw.signIn("manager", Map.of("Cookie", fitters)).session();
    assertThat(managers).isNotEqualTo(fitters);
    assertThat(Raw.get("/sizing/measurers", Map.of("Cookie", fitters)).status()).isEqualTo(403);
  }

  @Test
  @DisplayName("with any letter changed is none")
  void changed() {
    String session = Raw.signIn("manager", Map.of()).session();
    for (int i = Raw.SESSION.length(); i < session.length(); i += 7) {
      char other = session.charAt(i) == 'A' ? 'B' : 'A';
      String changed = session.substring(0, i) + other + session.substring(i + 1);
      assertThat(opens(changed)).as("letter " + i).isFalse();
    }
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "https://shop.example.net/",
        "//shop.example.net/",
        "/\\shop.example.net",
        "javascript:alert(1)"
      })
  @DisplayName("does not begin with a way to somebody else's site")
  void openRedirect(String where) {
    Raw.Answer signedIn =
        Raw.signIn("manager", Map.of("Cookie", "quarkus-redirect-location=" + where));
    assertThat(signedIn.header("Location")).doesNotContain("shop.example.net", "javascript");
  }

  @ParameterizedTest(name = "{0} {1}")
  @CsvSource({
    "Origin, https://shop.example.net",
    "Origin, null",
    "Sec-Fetch-Site, cross-site",
    "Sec-Fetch-Site, same-site"
  })
  @DisplayName("does nothing that a page of somebody else asks for")
  void foreignPage(String header, String value) {
    String cookie = Raw.signIn("manager", Map.of()).session();
    for (String who : new String[] {"Cookie", "Authorization"}) {
      String proof = who.equals("Cookie") ? cookie : Raw.login("manager");
      Raw.Answer answer =
          Raw.post("/inventory/damage", Map.of(who, proof, header, value), "tag=none");
      assertThat(answer.status()).as(who).isEqualTo(403);
    }
    assertThat(Raw.signIn("manager", Map.of(header, value)).session())
        .as("nor does such a page sign anybody in")
        .isEmpty();
  }

  @Test
  @DisplayName("does what its own pages ask for")
  void ownPage() {
    String cookie = Raw.signIn("manager", Map.of("Origin", Tapeline.address())).session();
    assertThat(cookie).isNotEmpty();
    for (Map<String, String> own :
        List.of(
            Map.of("Cookie", cookie, "Origin", Tapeline.address()),
            Map.of("Cookie", cookie, "Origin", STRANGER, "Sec-Fetch-Site", "same-origin"),
            Map.of("Cookie", cookie))) {
      assertThat(Raw.post("/inventory/damage", own, "tag=none").status()).isEqualTo(400);
    }
  }

  private static boolean opens(String session) {
    return Raw.get(PAGE, Map.of("Cookie", session, "Accept", "text/html")).status() == 200;
  }
}
