package org.tapeline.acceptance;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Page;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.acceptance.Chromium.Screen;

class StationByKeyboardTest {

  @Test
  @DisplayName("At the station a keyboard alone leads through the readings and to the next player")
  void enterLeadsOn() {
    Page page = Chromium.windowOf("fitter.north", Screen.PHONE);
    page.navigate("/sizing/station?team=U12-KITES");
    String player = page.locator("h1").innerText();
    assertThat(page.getByLabel("First reading")).isFocused();
    page.keyboard().type("21 1/4");
    page.keyboard().press("Enter");
    assertThat(page.getByLabel("Second reading")).isFocused();
    page.keyboard().type("541 mm");
    page.keyboard().press("Enter");
    assertThat(page.locator(".notice.ok")).containsText("Recorded: " + player);
    assertThat(page.locator("h1")).not().hasText(player);
    assertThat(page.getByLabel("First reading")).isFocused();
  }

  @Test
  @DisplayName("The keys put eighths and units into the reading that was touched last")
  void keys() {
    Page page = Chromium.windowOf("fitter.north", Screen.PHONE);
    page.navigate("/sizing/station?team=U8-OTTERS");
    page.getByLabel("Second reading").click();
    page.keyboard().type("21");
    page.getByLabel("and three quarters").click();
    page.getByText("in", new Page.GetByTextOptions().setExact(true)).click();
    assertThat(page.getByLabel("Second reading")).hasValue("21 3/4 in");
    assertThat(page.locator("#second-said")).containsText("552 mm");
  }
}
