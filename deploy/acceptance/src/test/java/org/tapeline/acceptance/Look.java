package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.ViewportSize;
import java.nio.file.Path;
import org.tapeline.acceptance.Chromium.Screen;

/**
 * Looks at a page at every size that pages are made for. The pictures are kept in {@code
 * target/pages}, for people to look at too.
 */
final class Look {
  private static final Path PICTURES = Tapeline.ROOT.resolve("deploy/acceptance/target/pages");

  private Look() {}

  /** Fails when the page is wider than a screen. */
  static void at(Page page, String name) {
    ViewportSize before = page.viewportSize();
    for (Screen screen : Screen.values()) {
      page.setViewportSize(screen.width(), screen.height());
      String file = name + "-" + screen.name().toLowerCase() + ".png";
      page.screenshot(
          new Page.ScreenshotOptions().setFullPage(true).setPath(PICTURES.resolve(file)));
      assertThat((Boolean) page.evaluate("document.documentElement.scrollWidth <= innerWidth"))
          .as(page.url() + " fits the screen of a " + screen)
          .isTrue();
    }
    page.setViewportSize(before.width, before.height);
  }
}
