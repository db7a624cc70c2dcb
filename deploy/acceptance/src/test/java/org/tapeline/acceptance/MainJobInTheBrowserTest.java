package org.tapeline.acceptance;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import com.microsoft.playwright.options.FilePayload;
import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.acceptance.Chromium.Screen;

/** The six steps of the main job, clicked by the people who do them, for one new player. */
class MainJobInTheBrowserTest {
  private static final String NAME = "Orla Fennimarsh";
  private static final String PARENT = "petra.fennimarsh@example.org";
  private static final String ROSTER =
      "player_number,given_name,family_name,birth_date,sex,team,field,"
          + "guardian_name,guardian_email,guardian_phone,guardian_language\n"
          + "LV-9001,Orla,Fennimarsh,2013-03-02,f,U10-HAWKS,NORTH,"
          + "Petra Fennimarsh,"
          + PARENT
          + ",(303) 555-0199,en\n";

  private final Page manager = Chromium.windowOf("manager", Screen.DESK);
  private final Page fitter = Chromium.windowOf("fitter.north", Screen.PHONE);
  private final Page coach = Chromium.windowOf("coach.hawks", Screen.PHONE);
  private final Page depot = Chromium.windowOf("depot", Screen.DESK);

  @Test
  @DisplayName(
      "A new player is measured, does not fit, waits for the depot, fits, and is told of damage")
  void theWholeJob() {
    importThePlayer();
    measureTheHead();
    coach.navigate("/fitting/sideline");
    theOnlyLargeHelmetHereIsTooTight();
    assertThat(coachsLine()).containsText("Do not wear");
    theParentHasTheDateAndACalendarFile();
    String tag = theDepotSendsTheOneThatIsKept();
    thatOneFits(tag);
    assertThat(coachsLine()).containsText("May wear");
    assertThat(coachsLine()).containsText(tag);
    aCrackTakesItOutOfUse(tag);
    assertThat(coachsLine()).containsText("Do not wear");
    Patience.soon().untilAsserted(() -> assertThat(Post.to(PARENT)).hasSizeGreaterThan(1));
  }

  private void importThePlayer() {
    manager.navigate("/sizing/import");
    manager
        .locator("#players-file")
        .setInputFiles(
            new FilePayload("players.csv", "text/csv", ROSTER.getBytes(StandardCharsets.UTF_8)));
    button(manager, "Import players").click();
    assertThat(manager.getByRole(AriaRole.STATUS))
        .containsText(Pattern.compile("1 taken|1 unchanged"));
  }

  /** 23 1/4 in is 591 mm: an extra large, of which only the depot has any. */
  private void measureTheHead() {
    fitter.navigate("/sizing/players?q=LV-9001");
    fitter.getByRole(AriaRole.LINK, named("Measure")).last().click();
    fitter.getByLabel("First reading").fill("23 1/4");
    fitter.getByLabel("Second reading").fill("591 mm");
    button(fitter, "Record").click();
    assertThat(fitter.getByRole(AriaRole.STATUS)).containsText("591 mm");
    assertThat(fitter.locator("main")).containsText("Youth extra large");
    Look.at(fitter, "fit-0-measured");
  }

  private void theOnlyLargeHelmetHereIsTooTight() {
    String tag =
        Tapeline.get(
                "fitter.north",
                "/inventory/api/helmets?place=NORTH&state=available&size=youth-large")
            .path(0)
            .path("tag")
            .asText();
    openTheFitCheck();
    Look.at(fitter, "fit-1-helmet");
    putOn(tag, "youth-large");
    passUntil("Snug on all sides");
    Look.at(fitter, "fit-2-check");
    button(fitter, "Fails: Tight: it presses or hurts").click();
    assertThat(fitter.locator("main")).containsText("Let a little air out");
    Look.at(fitter, "fit-3-failed-check");
    fitter.getByRole(AriaRole.LINK, named("No fit")).click();
    assertThat(fitter.locator("main")).containsText("The re-fit will need");
    Look.at(fitter, "fit-4-no-fit");
    button(fitter, "No fit: open a re-fit case").click();
    assertThat(heading(fitter)).hasText("No fit");
  }

  private void theParentHasTheDateAndACalendarFile() {
    Patience.soon().untilAsserted(() -> assertThat(Post.to(PARENT)).isNotEmpty());
    Post.Mail mail = Post.to(PARENT).getFirst();
    assertThat(mail.subject()).contains("Re-fit on");
    assertThat(mail.attachment()).contains("BEGIN:VEVENT", "North Meadow");
    assertThat(mail.page()).doesNotContain("Fennimarsh&#39;s");
  }

  private String theDepotSendsTheOneThatIsKept() {
    depot.navigate("/inventory/restock");
    Locator line =
        depot
            .locator("tr", new Page.LocatorOptions().setHasText("NORTH"))
            .filter(new Locator.FilterOptions().setHasText("Youth extra large"))
            .first();
    String tag = line.getByRole(AriaRole.LINK).first().innerText();
    line = depot.locator("tr", new Page.LocatorOptions().setHasText(tag));
    button(line, "Picked").click();
    assertThat(line).containsText("Picked");
    button(line, "Sent").click();
    assertThat(line).containsText("Shipped");
    button(line, "Received, all good").click();
    assertThat(line).hasCount(0);
    return tag;
  }

  private void thatOneFits(String tag) {
    openTheFitCheck();
    putOn(tag, "youth-x-large");
    passUntil("Every check passed");
    Look.at(fitter, "fit-5-every-check-passed");
    button(fitter, "Sign off and hand out").click();
    assertThat(heading(fitter)).hasText("Signed off");
    assertThat(fitter.locator("main")).containsText("May wear");
    Look.at(fitter, "fit-6-signed-off");
  }

  private void aCrackTakesItOutOfUse(String tag) {
    fitter.navigate("/inventory/helmets/" + tag + "/damage");
    choose("Shell");
    choose("Cracked or broken");
    fitter.getByLabel("Photo").setInputFiles(SnapShot.of("damage.jpg", 3000, 2000));
    assertThat(fitter.locator("form[aria-busy]")).hasCount(0); // the photo has been made smaller
    button(fitter, "Report damage").click();
    assertThat(fitter.locator("main")).containsText("out of use from now on");
    assertThat(fitter.locator("img.photo")).isVisible();
    Look.at(fitter, "damage-reported");
  }

  private void choose(String words) {
    fitter
        .locator(".choices a")
        .filter(new Locator.FilterOptions().setHasText(words))
        .first()
        .click();
  }

  private void openTheFitCheck() {
    String player =
        Tapeline.get("fitter.north", "/sizing/api/players/LV-9001").path("player").asText();
    fitter.navigate("/fitting/players/" + player);
    button(fitter, "New fit check").click();
  }

  private void putOn(String tag, String size) {
    fitter.getByLabel("Tag on the helmet").fill(tag);
    fitter.getByLabel("Size on the label inside").selectOption(size);
    button(fitter, "Helmet is on").click();
  }

  /** Answers "passes" until the page asks this. */
  private void passUntil(String question) {
    String asked = heading(fitter).innerText();
    for (int i = 0; i < 40 && !asked.equals(question); i++) {
      button(fitter, "Passes").click();
      assertThat(heading(fitter)).not().hasText(asked);
      asked = heading(fitter).innerText();
    }
    assertThat(asked).isEqualTo(question);
  }

  private Locator coachsLine() {
    return coach.locator("tr", new Page.LocatorOptions().setHasText(NAME));
  }

  private static Locator heading(Page page) {
    return page.locator("h1");
  }

  private static Locator button(Page page, String name) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name).setExact(true));
  }

  private static Locator button(Locator inside, String name) {
    return inside.getByRole(
        AriaRole.BUTTON, new Locator.GetByRoleOptions().setName(name).setExact(true));
  }

  private static Page.GetByRoleOptions named(String name) {
    return new Page.GetByRoleOptions().setName(name).setExact(true);
  }
}
