package org.tapeline.acceptance;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A parent with an old phone: from the mail to another date, to a call, without any script. */
class ParentWithoutScriptsTest {
  private static final String PLAYER = "LV-9002";
  private static final String PARENT = "tilda.marrowby@example.org";
  private static final String ROSTER =
      "player_number,given_name,family_name,birth_date,sex,team,field,"
          + "guardian_name,guardian_email,guardian_phone,guardian_language\n"
          + PLAYER
          + ",Wren,Marrowby,2014-05-20,f,U10-HAWKS,NORTH,Tilda Marrowby,"
          + PARENT
          + ",(303) 555-0187,en\n";
  private static final Pattern LINK = Pattern.compile("/notify/n/[A-Za-z0-9_-]+");

  private final Page phone = Chromium.withoutScripts();

  @Test
  @DisplayName(
      "A parent reads the notice, chooses another slot, sees the new date and asks for a call")
  void choosesAnotherSlot() {
    phone.navigate(theMailsLink());
    assertThat(phone.locator("h1")).containsText("Do not wear");
    Look.at(phone, "parent-notice");
    String path = phone.url();

    link("Choose another time for Wren").click();
    assertThat(phone.locator("h1")).hasText("Choose another time for Wren");
    Look.at(phone, "parent-choice");
    button("Take this time").click();
    assertThat(phone.getByRole(AriaRole.ALERT)).containsText("Pick a time first");
    Locator last = phone.getByRole(AriaRole.RADIO).last();
    String chosen = last.getAttribute("value");
    last.check();
    button("Take this time").click();
    assertThat(phone.getByRole(AriaRole.STATUS)).containsText("This is your time now");
    assertThat(phone.locator("input[name=had]").getAttribute("value")).isEqualTo(chosen);
    assertThat(phone.locator("input[value='" + chosen + "']")).hasCount(1);
    Look.at(phone, "parent-chosen");

    Patience.soon()
        .untilAsserted(
            () ->
                assertThat(Post.to(PARENT).stream().map(Post.Mail::subject))
                    .anyMatch(subject -> subject.contains("Your new time")));
    phone.navigate(path);
    assertThat(phone.locator("main")).containsText("There is newer news");
    button("Please call me").click();
    assertThat(phone.locator("main")).containsText("We know that you want a call");
    button("I have read this").click();
    assertThat(phone.locator("main")).containsText("We know that you have read this");
    Look.at(phone, "parent-read");
  }

  /** A new player whose helmet breaks; the re-fit is booked on a day with free slots. */
  private static String theMailsLink() {
    Tapeline.importing("manager", "/sizing/api/import/players", ROSTER);
    Tapeline.post(
        "manager",
        "/fitting/api/fit-days",
        Map.of(
            "field",
            "NORTH",
            "date",
            LocalDate.now().plusDays(20).toString(),
            "opens",
            "17:00",
            "closes",
            "19:00",
            "fitters",
            1,
            "minutesPerFit",
            15));
    FailedFit.of(PLAYER);
    Patience.soon().untilAsserted(() -> assertThat(Post.to(PARENT)).isNotEmpty());
    List<Post.Mail> mails = Post.to(PARENT);
    Matcher link = LINK.matcher(mails.getFirst().page());
    assertThat(link.find()).isTrue();
    return link.group();
  }

  private Locator link(String name) {
    return phone.getByRole(AriaRole.LINK, new Page.GetByRoleOptions().setName(name));
  }

  private Locator button(String name) {
    return phone.getByRole(AriaRole.BUTTON, new Page.GetByRoleOptions().setName(name));
  }
}
