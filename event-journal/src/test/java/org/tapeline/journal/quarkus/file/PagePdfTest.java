package org.tapeline.journal.quarkus.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A page on paper")
class PagePdfTest {
  @Test
  @DisplayName("is made whatever characters its names have, those that XML forbids too")
  void oddCharacters() {
    String page =
        "<html lang=\"en\"><head><title>List</title></head><body><p>a\u000bb\u001b[31m\uffff\ud800"
            + " \ud83c\udfc8 \u00e9</p></body></html>";
    byte[] pdf = PagePdf.of(page);
    assertThat(new String(pdf, 0, 5, StandardCharsets.US_ASCII)).isEqualTo("%PDF-");
  }
}
