package org.tapeline.inventory.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.tapeline.inventory.whole.Depot.as;
import static org.tapeline.inventory.whole.Depot.commandOf;
import static org.tapeline.inventory.whole.Depot.freshModel;
import static org.tapeline.inventory.whole.Depot.helmet;
import static org.tapeline.inventory.whole.Depot.importing;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import io.quarkus.test.common.QuarkusTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.ValidatableResponse;
import jakarta.inject.Inject;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.label.LabelSheet;
import org.tapeline.inventory.label.LabelSheets;
import org.tapeline.testkit.TestServers;

@QuarkusTest
@QuarkusTestResource(TestServers.class)
@Tag("servers")
@DisplayName("Labels")
class LabelTest {
  private static final float DOTS_PER_INCH = 200;

  @Inject LabelSheets sheets;

  @BeforeEach
  void places() {
    Depot.places();
  }

  private static ValidatableResponse printed(String sheet, String start, String... choice) {
    var form = as("depot").formParam("sheet", sheet).formParam("start", start);
    for (int i = 0; i < choice.length; i += 2) {
      form = form.formParam(choice[i], choice[i + 1]);
    }
    return form.post("/labels/sheet").then();
  }

  /** What a phone reads that is held over each label, the free ones left out. */
  private static List<String> scanned(byte[] pdf, LabelSheet sheet, int from, int labels)
      throws IOException {
    List<String> codes = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      PDFRenderer renderer = new PDFRenderer(document);
      BufferedImage page = null;
      int shown = -1;
      for (int n = from; n < from + labels; n++) {
        LabelSheet.Spot spot = sheet.spot(n);
        if (spot.page() != shown) {
          shown = spot.page();
          page = renderer.renderImageWithDPI(shown, DOTS_PER_INCH, ImageType.GRAY);
        }
        codes.add(read(page, spot, sheet));
      }
      assertThat(document.getNumberOfPages()).isEqualTo(shown + 1);
    }
    return codes;
  }

  private static String read(BufferedImage page, LabelSheet.Spot spot, LabelSheet sheet) {
    int left = dots(spot.leftMm());
    int top = dots(spot.topMm());
    int width = Math.min(dots(sheet.labelWidthMm()), page.getWidth() - left);
    int height = Math.min(dots(sheet.labelHeightMm()), page.getHeight() - top);
    int[] seen = page.getRGB(left, top, width, height, null, 0, width);
    try {
      return new QRCodeReader()
          .decode(
              new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, seen))))
          .getText();
    } catch (ReaderException e) {
      throw new AssertionError("The code at " + spot + " cannot be read", e);
    }
  }

  private static int dots(double millimetres) {
    return (int) Math.round(millimetres / 25.4 * DOTS_PER_INCH);
  }

  @Test
  @DisplayName("are printed from the first free one on, and each code opens its helmet's page")
  void codes() throws IOException {
    String model = freshModel();
    String row = String.join(",", model, "youth-small", "L-77", "2026-01-15", "", "NORTH") + "\n";
    importing(
            "helmets",
            "all-or-none",
            "model,size,lot,manufactured_on,certified_until,place\n" + row.repeat(23))
        .statusCode(200);
    List<String> tags =
        as("depot").queryParam("model", model).get("/api/helmets").jsonPath().getList("tag");
    for (LabelSheet sheet : sheets.all()) {
      byte[] pdf =
          printed(sheet.code(), "5", "model", model, "lot", "L-77")
              .statusCode(200)
              .contentType("application/pdf")
              .extract()
              .asByteArray();
      Files.write(
          Files.createDirectories(Path.of("target/sheets")).resolve(sheet.code() + ".pdf"), pdf);
      assertThat(scanned(pdf, sheet, 4, 23))
          .containsExactlyElementsOf(
              tags.stream().map(t -> "http://127.0.0.1:8080/inventory/helmets/" + t).toList());
      try (PDDocument document = Loader.loadPDF(pdf)) {
        assertThat(new PDFTextStripper().getText(document)).contains(tags).contains("Youth small");
      }
    }
  }

  @Test
  @DisplayName("of typed tags are printed in any writing; a wrong one is told, what was typed kept")
  void typed() throws IOException {
    String tag = helmet(freshModel(), "youth-small", "NORTH");
    String written = tag.toLowerCase(Locale.ROOT).replaceFirst("lv", "lv-");
    byte[] pdf = printed("a4-3x8", "24", "tags", written).statusCode(200).extract().asByteArray();
    assertThat(scanned(pdf, sheets.find("a4-3x8").orElseThrow(), 23, 1).getFirst()).endsWith(tag);
    printed("a4-3x8", "1", "tags", tag + ",LV1234567")
        .statusCode(400)
        .body(containsString("No such helmet: LV1234567"))
        .body(containsString("value=\"" + tag + ",LV1234567\""));
    printed("a4-3x8", "25", "tags", tag).statusCode(400).body(containsString("labels 1 to 24"));
    printed("a4-3x8", "1").statusCode(400).body(containsString("none is chosen"));
  }

  @Test
  @DisplayName("for helmets to come have tags of their own, the same ones when sent twice")
  void fresh() throws IOException {
    UUID id = UUID.randomUUID();
    for (int i = 0; i < 2; i++) {
      as("depot")
          .redirects()
          .follow(false)
          .formParam("commandId", id)
          .formParam("count", "3")
          .formParam("model", "model-a")
          .post("/labels/fresh")
          .then()
          .statusCode(303);
    }
    as("depot")
        .queryParam("delivery", id)
        .get("/labels")
        .then()
        .statusCode(200)
        .body(containsString("3 labels"));
    byte[] pdf = printed("letter-3x10", "1", "delivery", id.toString()).extract().asByteArray();
    List<String> codes = scanned(pdf, sheets.find("letter-3x10").orElseThrow(), 0, 3);
    assertThat(codes).doesNotHaveDuplicates();
    String tag = codes.getFirst().replaceFirst(".*/", "");
    as("depot").get("/api/helmets/" + tag).then().statusCode(404);
    commandOf("fitter.north").get("/labels").then().statusCode(403);
    as("depot")
        .formParam("commandId", UUID.randomUUID())
        .formParam("count", "many")
        .post("/labels/fresh")
        .then()
        .statusCode(400)
        .body(containsString("count-error"))
        .body(containsString("value=\"many\""));
  }
}
