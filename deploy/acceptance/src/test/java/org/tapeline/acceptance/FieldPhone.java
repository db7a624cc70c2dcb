package org.tapeline.acceptance;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.AriaRole;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Pattern;
import org.tapeline.acceptance.CutLine.Signal;

/** A fitter's phone with the field app, on a line that can be cut. */
final class FieldPhone implements AutoCloseable {
  static final String APP = "/fitting/field/";

  private final CutLine line = new CutLine(Tapeline.address());
  private final Path profile;
  private BrowserContext browser;
  private Page page;

  private FieldPhone() {
    try {
      profile = Files.createTempDirectory("phone");
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    open();
  }

  /** One that the fitter signed in on and that has taken along what it needs. */
  static FieldPhone of(String user) {
    FieldPhone phone = new FieldPhone();
    phone.signsIn(user);
    assertThat(phone.page.locator("body[data-ready=yes]")).isAttached();
    assertThat(phone.page.locator("#queue")).hasText("All sent");
    return phone;
  }

  void signsIn(String user) {
    page.navigate(APP);
    followsSignIn(user);
    assertThat(page.locator("h1")).hasText("Players");
  }

  /** After a restart of the browser nobody is signed in any more. */
  void signsInToSend(String user) {
    queue().click();
    followsSignIn(user);
  }

  private void followsSignIn(String user) {
    page.locator("main a.primary")
        .filter(new Locator.FilterOptions().setHasText("Sign in"))
        .click();
    Chromium.signIn(page, user);
    page.waitForURL("**" + APP + "**");
  }

  private void open() {
    browser = Chromium.keeping(profile, line.address());
    page = browser.pages().getFirst();
  }

  Page page() {
    return page;
  }

  void losesSignal() {
    line.is(Signal.NONE);
    browser.setOffline(true);
  }

  void losesAnswers() {
    line.is(Signal.ANSWERS_LOST);
  }

  void hasSignal() {
    line.is(Signal.GOOD);
    browser.setOffline(false);
  }

  /** Closes the browser and begins anew where the battery left off; still without signal. */
  void restartsWithoutSignal() {
    String address = page.url();
    browser.close();
    open();
    browser.setOffline(true);
    page.navigate(address);
  }

  Locator button(String text) {
    return page.getByRole(
        AriaRole.BUTTON, new Page.GetByRoleOptions().setName(Pattern.compile("^" + text)));
  }

  Locator queue() {
    return page.locator("#queue");
  }

  void opensPlayer(String number) {
    page.navigate(APP + "#/players");
    await().pollInSameThread().until(() -> onlyFound(number));
    page.locator("a.card").first().click();
    assertThat(page.locator("main")).containsText(number);
  }

  /** Types again when the screen before this one was still shown at the first time. */
  private boolean onlyFound(String number) {
    page.getByLabel("Number, name or team").fill(number);
    return page.locator("a.card").count() == 1;
  }

  void beginsFitCheck(String number) {
    opensPlayer(number);
    button("New fit check").click();
    assertThat(page.locator("h1")).hasText("Put a helmet on");
  }

  void putsOn(String tag, String size) {
    page.getByLabel("Tag on the helmet").fill(tag);
    page.getByLabel("Size on the label inside").selectOption(size);
    button("Helmet is on").click();
    assertThat(page.locator("main")).containsText("check 1 of ");
  }

  /** Answers that many checks with a pass; all that are left when fewer are. */
  void passes(int checks) {
    for (int i = 0; i < checks && !page.locator("h1").innerText().equals(DONE); i++) {
      String question = page.locator("h1").innerText();
      button("Passes").click();
      assertThat(page.locator("h1")).not().hasText(question);
    }
  }

  private static final String DONE = "Every check passed";

  void passesAll() {
    passes(Integer.MAX_VALUE);
    assertThat(page.locator("h1")).hasText(DONE);
  }

  void signsOff() {
    button("Sign off and hand out").click();
  }

  @Override
  public void close() {
    browser.close();
    line.close();
  }
}
