package org.tapeline.acceptance;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ColorScheme;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The screens of the field app")
class FieldAppScreensTest {
  private static final Path PICTURES = Tapeline.ROOT.resolve("deploy/acceptance/target/pages");

  /** WCAG asks for 24 px; with gloves on, in the rain, twice that. */
  private static final String TOO_SMALL =
      """
      () => [...document.querySelectorAll('button, a.button, a.card, main input, main select')]
        .filter(e => e.offsetParent && e.getBoundingClientRect().height < 47.5 && e.type !== 'radio')
        .map(e => e.outerHTML.slice(0, 120))
      """;

  private static final String SCROLLS =
      """
      () => [document.scrollingElement, document.querySelector('main'),
             document.querySelector('.split > .top')]
        .filter(e => e && (e.scrollHeight > e.clientHeight + 1 || e.scrollWidth > e.clientWidth + 1))
        .map(e => e.tagName + '.' + e.className + ' ' + e.scrollHeight + '>' + e.clientHeight)
      """;

  private static void look(Page page, String name) {
    for (ColorScheme scheme : List.of(ColorScheme.DARK, ColorScheme.LIGHT)) {
      page.emulateMedia(new Page.EmulateMediaOptions().setColorScheme(scheme));
      String file = "field-" + name + "-" + scheme.name().toLowerCase() + ".png";
      page.screenshot(new Page.ScreenshotOptions().setPath(PICTURES.resolve(file)));
      Axe.findsNothingGrave(page);
    }
    assertThat((List<?>) page.evaluate(TOO_SMALL)).as(name + ": too small for a thumb").isEmpty();
  }

  private static void lookWithoutScroll(Page page, String name) {
    look(page, name);
    assertThat((List<?>) page.evaluate(SCROLLS)).as(name + ": has to be scrolled").isEmpty();
  }

  @Test
  @DisplayName("can be read and pressed by everybody, and none of a fit check has to be scrolled")
  void everyScreen() {
    FieldStory story = FieldStory.next();
    try (FieldPhone phone = FieldPhone.of(FieldStory.FITTER)) {
      Page page = phone.page();
      page.navigate(FieldPhone.APP + "#/players");
      assertThat(page.locator("a.card").first()).isVisible();
      look(page, "players");
      phone.losesSignal();
      phone.opensPlayer(story.number());
      lookWithoutScroll(page, "player");
      phone.button("New fit check").click();
      assertThat(page.locator("h1")).hasText("Put a helmet on");
      lookWithoutScroll(page, "helmet");
      phone.putsOn(story.tag(), story.size());
      everyCheck(phone);
      lookWithoutScroll(page, "pass");
      endings(phone);
      page.navigate(FieldPhone.APP + "#/queue");
      assertThat(page.locator("h1")).containsText("to be sent");
      look(page, "queue");
      page.navigate(FieldPhone.APP + "#/sign-out");
      assertThat(page.locator("h1")).hasText("Sign out");
      look(page, "sign-out");
    }
  }

  private static void everyCheck(FieldPhone phone) {
    Page page = phone.page();
    for (int n = 1; !page.locator("h1").innerText().equals("Every check passed"); n++) {
      String question = page.locator("h1").innerText();
      lookWithoutScroll(page, "check-" + n);
      if (question.equals("Snug on all sides")) {
        phone.button("Fails").first().click();
        assertThat(page.locator("main")).containsText("Try this");
        lookWithoutScroll(page, "remedy");
        phone.button("Done").first().click();
        // Else "Passes after all" of the screen before could be pressed instead.
        assertThat(page.locator("main")).not().containsText("Try this");
      }
      phone.button("Passes").click();
      assertThat(page.locator("h1")).not().hasText(question);
    }
  }

  private static void endings(FieldPhone phone) {
    Page page = phone.page();
    String session = page.url().replaceAll(".*#/session/", "");
    page.navigate(FieldPhone.APP + "#/fail/" + session);
    assertThat(page.locator("h1")).hasText("End without a fit?");
    lookWithoutScroll(page, "fail");
    page.navigate(FieldPhone.APP + "#/abandon/" + session);
    assertThat(page.locator("h1")).hasText("Pause or stop?");
    lookWithoutScroll(page, "stop");
    phone.button("Pause").click();
    assertThat(page.locator("h1")).hasText("Players");
    page.navigate(FieldPhone.APP + "#/session/" + session);
    assertThat(page.locator("h1")).hasText("Paused");
    lookWithoutScroll(page, "paused");
    phone.button("Go on").click();
    assertThat(page.locator("h1")).hasText("Every check passed");
    phone.signsOff();
    assertThat(page.locator("h1")).hasText("Fit check passed here");
    lookWithoutScroll(page, "result");
  }
}
