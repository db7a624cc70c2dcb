package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Looks over a page with axe-core, by the rules of WCAG 2.2 A and AA and its best practices. */
final class Axe {
  private static final String SCRIPT = script();
  private static final String GRAVE =
      """
      async () => (await axe.run()).violations
        .filter(v => ['serious', 'critical'].includes(v.impact))
        .map(v => v.id + ': ' + v.nodes.map(n => n.target + ' ' + n.failureSummary).join('; '))
      """;

  private Axe() {}

  /** Fails on every finding that axe calls serious or critical. */
  static void findsNothingGrave(Page page) {
    page.evaluate(SCRIPT);
    assertThat((List<?>) page.evaluate(GRAVE)).as(page.url()).isEmpty();
  }

  private static String script() {
    try (InputStream in = Axe.class.getResourceAsStream("/axe.min.js")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
