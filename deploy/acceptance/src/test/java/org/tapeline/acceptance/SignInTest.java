package org.tapeline.acceptance;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.Response;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.acceptance.Chromium.Screen;

class SignInTest {
  @Test
  @DisplayName("One sign-in is good for all four services, and signing out ends it for all")
  void oneSignInServesAllServices() {
    Page page = Chromium.windowOf("manager", Screen.DESK);
    for (String path :
        new String[] {
          "/sizing/players", "/fitting/players", "/inventory/stock", "/notify/notices"
        }) {
      Response response = page.navigate(path);
      assertThat(response.status()).as(path).isEqualTo(200);
      assertThat(page.url()).endsWith(path);
      assertThat(page.locator("header .meta")).hasText("manager");
    }
    page.navigate("/sign-out");
    page.navigate("/inventory/stock");
    assertThat(page.url()).contains("/sign-in");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/sizing/players",
        "/fitting/players",
        "/fitting/sideline",
        "/inventory/restock",
        "/notify/notices"
      })
  @DisplayName("Who is not signed in is asked to, and then gets the page that was asked for")
  void goesOnToWhatWasAskedFor(String path) {
    Page page = Chromium.window(Screen.PHONE);
    page.navigate(path);
    Chromium.signIn(page, "manager");
    assertThat(page.url()).endsWith(path);
  }

  @Test
  @DisplayName("A wrong password says so and signs nobody in")
  void wrongPassword() {
    Page page = Chromium.window(Screen.PHONE);
    page.navigate("/sign-in");
    page.getByLabel("User").fill("manager");
    page.getByLabel("Password").fill("not this one");
    page.locator("main button").click();
    assertThat(page.getByRole(com.microsoft.playwright.options.AriaRole.ALERT))
        .containsText("do not go together");
    page.navigate("/sizing/players");
    assertThat(page.url()).contains("/sign-in");
  }

  @Test
  @DisplayName("A fitter sees only players of own fields; a coach no page of the depot")
  void eachSeesOnlyOwn() {
    Page fitter = Chromium.windowOf("fitter.south", Screen.PHONE);
    fitter.navigate("/fitting/players");
    assertThat(fitter.locator("main")).containsText("U10-FOXES");
    assertThat(fitter.locator("main")).not().containsText("U10-HAWKS");
    String hawk = Tapeline.get("manager", "/sizing/api/players/LV-0001").path("player").asText();
    assertThat(fitter.navigate("/fitting/players/" + hawk).status()).isIn(403, 404);

    Page coach = Chromium.windowOf("coach.hawks", Screen.PHONE);
    assertThat(coach.navigate("/inventory/restock").status()).isEqualTo(403);
    assertThat(coach.navigate("/notify/notices").status()).isEqualTo(403);
  }
}
