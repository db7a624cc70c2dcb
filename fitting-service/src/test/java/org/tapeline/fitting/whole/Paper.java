package org.tapeline.fitting.whole;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.NotFoundException;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;

/** A sheet as somebody has it in the hand: reads it and holds a phone over its code. */
record Paper(String text, String code, int pages, String title, String language) {
  private static final float DOTS_PER_INCH = 150;

  /** Kept too, for people to look at. */
  static Paper of(byte[] pdf) {
    keep(pdf, "sheet.pdf");
    try (PDDocument sheet = Loader.loadPDF(pdf)) {
      PDFTextStripper stripper = new PDFTextStripper();
      stripper.setSortByPosition(true);
      BufferedImage first =
          new PDFRenderer(sheet).renderImageWithDPI(0, DOTS_PER_INCH, ImageType.GRAY);
      return new Paper(
          stripper.getText(sheet).replaceAll("\\s+", " "),
          scanned(first),
          sheet.getNumberOfPages(),
          sheet.getDocumentInformation().getTitle(),
          sheet.getDocumentCatalog().getLanguage());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static void keep(byte[] document, String name) {
    try {
      Files.write(Files.createDirectories(Path.of("target/sheets")).resolve(name), document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String scanned(BufferedImage page) {
    int width = page.getWidth();
    int height = page.getHeight();
    int[] dots = page.getRGB(0, 0, width, height, null, 0, width);
    BinaryBitmap seen =
        new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, dots)));
    try {
      return new QRCodeReader().decode(seen).getText();
    } catch (NotFoundException | ChecksumException | FormatException e) {
      throw new AssertionError("The code cannot be read from the printed page", e);
    }
  }

  /** The path under the service of what the code opens. */
  String path() {
    return code.replaceFirst("^https?://[^/]+/fitting", "");
  }
}
