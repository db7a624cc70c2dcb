package org.tapeline.acceptance;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The field app without signal")
class FieldAppWithoutSignalTest {
  private static final Pattern WAITING = Pattern.compile("[0-9]+ waiting, no signal");

  private static String sessionOn(FieldPhone phone) {
    return phone.page().url().replaceAll(".*#/session/", "");
  }

  @Test
  @DisplayName("takes a whole fit check, over a restart of the browser, and sends it once")
  void wholeSession() {
    FieldStory story = FieldStory.next();
    try (FieldPhone phone = FieldPhone.of(FieldStory.FITTER)) {
      phone.losesSignal();
      phone.beginsFitCheck(story.number());
      phone.putsOn(story.tag(), story.size());
      phone.passes(7);
      String question = phone.page().locator("h1").innerText();
      assertThat(phone.queue()).hasText(WAITING);
      phone.restartsWithoutSignal();
      assertThat(phone.page().locator("h1")).hasText(question);
      assertThat(phone.queue()).hasText(WAITING);
      phone.passesAll();
      phone.page().getByLabel("Air temperature").fill("70");
      phone.signsOff();
      assertThat(phone.page().locator("h1")).hasText("Fit check passed here");
      assertThat(phone.page().locator("main")).containsText("not signed off until sent");
      assertThat(phone.page().locator("main .state.may-wear")).hasCount(0);
      String session = sessionOn(phone);
      phone.hasSignal();
      assertThat(phone.queue()).hasText(Pattern.compile("waiting, sign in to send"));
      phone.signsInToSend(FieldStory.FITTER);
      assertThat(phone.queue()).hasText("All sent");
      phone.page().navigate(FieldPhone.APP + "#/session/" + session);
      assertThat(phone.page().locator("h1")).hasText("Recorded: signed off");
      recorded(session, story);
    }
  }

  private static void recorded(String session, FieldStory story) {
    JsonNode shown = FieldStory.session(session);
    assertThat(shown.path("status").asText()).isEqualTo("passed");
    assertThat(shown.path("tag").asText()).isEqualTo(story.tag());
    assertThat(shown.path("answers")).allMatch(answer -> answer.asText().equals("pass"));
    Patience.soon().untilAsserted(() -> assertThat(story.state()).isEqualTo("may-wear"));
  }

  @Test
  @DisplayName("loses nothing and does nothing twice when answers are lost on the way")
  void answersLost() {
    FieldStory story = FieldStory.next();
    try (FieldPhone phone = FieldPhone.of(FieldStory.FITTER)) {
      phone.losesSignal();
      phone.beginsFitCheck(story.number());
      phone.putsOn(story.tag(), story.size());
      phone.passes(2);
      String session = sessionOn(phone);
      phone.losesAnswers();
      phone.page().context().setOffline(false);
      await()
          .until(
              () -> Tapeline.status(FieldStory.FITTER, "/fitting/api/sessions/" + session) == 200);
      assertThat(phone.queue()).hasText(WAITING);
      phone.hasSignal();
      phone.passesAll();
      phone.signsOff();
      assertThat(phone.page().locator("h1")).hasText("Recorded: signed off");
      assertThat(phone.queue()).hasText("All sent");
      recorded(session, story);
    }
  }

  @Test
  @DisplayName("loses nothing and does nothing twice when the service is killed while it sends")
  void killed() {
    FieldStory story = FieldStory.next();
    try (FieldPhone phone = FieldPhone.of(FieldStory.FITTER)) {
      phone.losesSignal();
      phone.beginsFitCheck(story.number());
      phone.putsOn(story.tag(), story.size());
      phone.passesAll();
      phone.signsOff();
      String session = sessionOn(phone);
      phone.hasSignal();
      await()
          .pollInterval(Duration.ofMillis(20))
          .until(
              () ->
                  Tapeline.status(FieldStory.FITTER, "/fitting/api/sessions/" + session) == 200
                      && FieldStory.session(session).path("answers").size() >= 3);
      KilledService service = KilledService.of("fitting", "data");
      assertThat(phone.queue()).hasText(WAITING);
      service.startAgain();
      Patience.soon()
          .until(
              () -> Tapeline.status(FieldStory.FITTER, "/fitting/api/sessions/" + session) == 200);
      phone.queue().click();
      phone.button("Send now").click();
      assertThat(phone.queue()).hasText("All sent");
      recorded(session, story);
    }
  }

  @Test
  @DisplayName("refuses a mistyped tag and a helmet that is not free, in the service's words")
  void refusals() {
    FieldStory story = FieldStory.next();
    try (FieldPhone phone = FieldPhone.of(FieldStory.FITTER)) {
      phone.losesSignal();
      phone.beginsFitCheck(story.number());
      Page page = phone.page();
      page.getByLabel("Tag on the helmet").fill(story.tag().substring(1));
      page.getByLabel("Size on the label inside").selectOption(story.size());
      page.getByLabel("Size on the label inside").focus();
      assertThat(page.locator("#tag-hint")).containsText("check character");
      page.getByLabel("Tag on the helmet").fill("A12425GABC1234002M");
      phone.button("Helmet is on").click();
      assertThat(page.getByRole(com.microsoft.playwright.options.AriaRole.ALERT).last())
          .containsText("No helmet with the tag");
    }
  }

  @Test
  @DisplayName("wipes the phone on sign-out, and asks twice while something is not sent")
  void signOut() {
    FieldStory story = FieldStory.next();
    try (FieldPhone phone = FieldPhone.of(FieldStory.FITTER)) {
      phone.losesSignal();
      phone.beginsFitCheck(story.number());
      Page page = phone.page();
      page.navigate(FieldPhone.APP + "#/sign-out");
      assertThat(page.locator("main")).containsText("1 entry is not sent yet");
      phone.button("Sign out without sending").click();
      phone.hasSignal();
      assertThat(phone.queue()).hasText("All sent");
      phone.button("Wipe this phone and sign out").click();
      page.waitForURL("**/sign-in");
      assertThat(page.evaluate("async () => (await indexedDB.databases()).length")).isEqualTo(0);
      page.navigate(FieldPhone.APP);
      assertThat(page.locator("main")).containsText("This phone holds nothing yet");
      assertThat(page.evaluate("() => Object.keys(localStorage)").toString())
          .doesNotContain("tapeline-field");
    }
  }

  @Test
  @DisplayName("signs out of a second tab too, and leaves nothing in it")
  void signOutOfTwoTabs() {
    try (FieldPhone phone = FieldPhone.of(FieldStory.FITTER)) {
      Page other = phone.page().context().newPage();
      other.navigate(FieldPhone.APP);
      assertThat(other.locator("h1")).hasText("Players");
      phone.page().navigate(FieldPhone.APP + "#/sign-out");
      phone.button("Wipe this phone and sign out").click();
      phone.page().waitForURL("**/sign-in");
      // It begins anew: at the sign-in, or empty when the first had signed out by then.
      assertThat(other.locator("main"))
          .containsText(Pattern.compile("This phone holds nothing yet|Password"));
      other.navigate(FieldPhone.APP);
      assertThat(other.locator("main")).containsText("This phone holds nothing yet");
      assertThat(other.evaluate("() => Object.keys(localStorage)").toString())
          .doesNotContain("tapeline-field");
    }
  }

  @Test
  @DisplayName("sends what one fitter entered under no other name")
  void otherName() {
    FieldStory story = FieldStory.next();
    try (FieldPhone phone = FieldPhone.of(FieldStory.FITTER)) {
      phone.losesSignal();
      phone.beginsFitCheck(story.number());
      String session = sessionOn(phone);
      phone.page().context().clearCookies();
      phone.hasSignal();
      assertThat(phone.queue()).hasText("1 waiting, sign in to send");
      phone.signsInToSend("manager");
      assertThat(phone.queue()).hasText("1 waiting for " + FieldStory.FITTER);
      assertThat(Tapeline.status("manager", "/fitting/api/sessions/" + session)).isEqualTo(404);
      phone.queue().click();
      phone.page().getByText("Sign in as " + FieldStory.FITTER).click();
      Chromium.signIn(phone.page(), FieldStory.FITTER);
      phone.page().navigate(FieldPhone.APP);
      assertThat(phone.queue()).hasText("All sent");
      assertThat(FieldStory.session(session).path("fitter").asText()).isEqualTo(FieldStory.FITTER);
    }
  }

  @Test
  @DisplayName("ends without a fit, and the re-fit case opens when there is signal")
  void noFit() {
    FieldStory story = FieldStory.next();
    try (FieldPhone phone = FieldPhone.of(FieldStory.FITTER)) {
      phone.losesSignal();
      phone.beginsFitCheck(story.number());
      phone.putsOn(story.tag(), story.size());
      phone.button("Fails").first().click();
      phone.page().getByText("No fit", new Page.GetByTextOptions().setExact(true)).click();
      assertThat(phone.page().locator("main")).containsText("The re-fit will need");
      phone.button("No fit: open a re-fit case").click();
      assertThat(phone.page().locator("h1")).hasText("No fit");
      assertThat(phone.page().locator("main")).containsText("Not yet recorded");
      phone.hasSignal();
      assertThat(phone.page().locator("main")).containsText("A re-fit case is open");
      await().until(() -> story.state().equals("do-not-wear"));
    }
  }

  @Test
  @DisplayName("tells plainly what another phone did meanwhile, and keeps what was entered")
  void twoPhones() {
    FieldStory story = FieldStory.next();
    try (FieldPhone first = FieldPhone.of(FieldStory.FITTER);
        FieldPhone second = FieldPhone.of(FieldStory.FITTER)) {
      first.losesSignal();
      for (FieldPhone phone : new FieldPhone[] {first, second}) {
        phone.beginsFitCheck(story.number());
        phone.putsOn(story.tag(), story.size());
        phone.passesAll();
      }
      first.signsOff();
      assertThat(first.page().locator("h1")).hasText("Fit check passed here");
      second.signsOff();
      assertThat(second.page().locator("h1")).hasText("Recorded: signed off");
      first.hasSignal();
      assertThat(first.queue()).hasText("1 needs you");
      assertThat(first.page().locator("h1")).hasText("Not recorded");
      first.queue().click();
      assertThat(first.page().locator("main")).containsText("What was entered");
      Axe.findsNothingGrave(first.page());
      first
          .page()
          .screenshot(
              new Page.ScreenshotOptions()
                  .setPath(
                      Tapeline.ROOT.resolve("deploy/acceptance/target/pages/field-conflict.png")));
      assertThat(first.page().locator("main")).containsText("Another session of this player");
      assertThat(first.page().locator("main")).containsText("handed over");
      toldOnThePlayersPage(story, "Another session of this player");
      Patience.soon().untilAsserted(() -> assertThat(story.state()).isEqualTo("may-wear"));
    }
  }

  private static void toldOnThePlayersPage(FieldStory story, String sentence) {
    Page page = Chromium.windowOf("manager", Chromium.Screen.DESK);
    page.navigate("/fitting/players/" + story.player());
    assertThat(page.locator("main")).containsText("Entered on a phone, not recorded");
    assertThat(page.locator("main")).containsText(sentence);
    page.navigate("/fitting/set-aside");
    Look.at(page, "set-aside");
  }

  @Test
  @DisplayName("tells of a helmet that was quarantined meanwhile")
  void quarantined() {
    FieldStory story = FieldStory.next();
    try (FieldPhone phone = FieldPhone.of(FieldStory.FITTER)) {
      phone.losesSignal();
      phone.beginsFitCheck(story.number());
      phone.putsOn(story.tag(), story.size());
      phone.passes(3);
      Tapeline.post(
          FieldStory.FITTER,
          "/inventory/api/helmets/" + story.tag() + "/damage",
          Map.of("where", "shell", "what", "crack"));
      await()
          .until(
              () ->
                  Tapeline.get(FieldStory.FITTER, "/fitting/api/field-pack")
                      .toString()
                      .matches(".*\"tag\":\"" + story.tag() + "\"[^}]*\"quarantined\".*"));
      phone.hasSignal();
      assertThat(phone.queue()).hasText("1 needs you");
      phone.queue().click();
      assertThat(phone.page().locator("main")).containsText("in quarantine");
      assertThat(phone.page().locator("main")).containsText("Put the helmet aside");
    }
  }
}
