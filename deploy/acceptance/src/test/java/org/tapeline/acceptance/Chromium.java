package org.tapeline.acceptance;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import com.microsoft.playwright.assertions.PlaywrightAssertions;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** One browser for all tests of this JVM; each person in it has a window of their own. */
final class Chromium {
  private static final List<String> PROGRAMS =
      List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome");

  /** So that it asks nothing of the network, and runs as root in a container too. */
  private static final List<String> QUIET =
      List.of(
          "--no-sandbox",
          "--disable-gpu",
          "--disable-quic",
          "--no-first-run",
          "--disable-background-networking",
          "--disable-component-update",
          "--disable-sync");

  static {
    // The default of five seconds is less than a second browser may need on a machine that is busy.
    PlaywrightAssertions.setDefaultAssertionTimeout(30_000);
  }

  private static Playwright playwright;
  private static Browser browser;

  private Chromium() {}

  /** The sizes that pages are made for. */
  enum Screen {
    PHONE(390, 844),
    DESK(1440, 900);

    private final int width;
    private final int height;

    Screen(int width, int height) {
      this.width = width;
      this.height = height;
    }

    int width() {
      return width;
    }

    int height() {
      return height;
    }
  }

  /** A new window in which nobody is signed in. */
  static Page window(Screen screen) {
    return window(screen, Tapeline.address());
  }

  /** A new window on that Tapeline. */
  static Page window(Screen screen, String address) {
    BrowserContext context =
        browser()
            .newContext(
                new Browser.NewContextOptions()
                    .setBaseURL(address)
                    .setViewportSize(screen.width, screen.height));
    context.setDefaultTimeout(30_000);
    return context.newPage();
  }

  /** A new window of an old phone: nobody is signed in, and no script runs. */
  static Page withoutScripts() {
    BrowserContext context =
        browser()
            .newContext(
                new Browser.NewContextOptions()
                    .setBaseURL(Tapeline.address())
                    .setJavaScriptEnabled(false)
                    .setViewportSize(Screen.PHONE.width, Screen.PHONE.height));
    context.setDefaultTimeout(30_000);
    return context.newPage();
  }

  /** A new window in which that user is signed in. */
  static Page windowOf(String user, Screen screen) {
    Page page = window(screen);
    page.navigate("/sign-in");
    signIn(page, user);
    return page;
  }

  static void signIn(Page page, String user) {
    page.getByLabel("User").fill(user);
    page.getByLabel("Password").fill(Tapeline.PASSWORD);
    page.locator("main button").click();
    page.waitForURL(url -> !url.contains("/sign-in") && !url.contains("j_security_check"));
  }

  /**
   * A browser of its own that keeps what it stored in that folder, as a phone does over a restart.
   */
  static BrowserContext keeping(Path profile, String address) {
    BrowserContext context =
        playwright()
            .chromium()
            .launchPersistentContext(
                profile,
                new BrowserType.LaunchPersistentContextOptions()
                    .setExecutablePath(program())
                    .setArgs(QUIET)
                    .setBaseURL(address)
                    .setViewportSize(Screen.PHONE.width, Screen.PHONE.height));
    context.setDefaultTimeout(30_000);
    return context;
  }

  private static synchronized Playwright playwright() {
    if (playwright == null) {
      playwright =
          Playwright.create(
              new Playwright.CreateOptions()
                  .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
      Runtime.getRuntime().addShutdownHook(new Thread(playwright::close));
    }
    return playwright;
  }

  private static synchronized Browser browser() {
    if (browser == null) {
      browser =
          playwright()
              .chromium()
              .launch(new BrowserType.LaunchOptions().setExecutablePath(program()).setArgs(QUIET));
    }
    return browser;
  }

  private static Path program() {
    return Stream.concat(Stream.ofNullable(System.getenv("CHROME_PATH")), PROGRAMS.stream())
        .map(Path::of)
        .filter(Files::isExecutable)
        .findFirst()
        .orElseThrow(
            () -> new IllegalStateException("No chromium: deploy/test installs one, or apt-get"));
  }
}
