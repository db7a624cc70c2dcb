package org.tapeline.inventory.restock;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.logging.Level;

/** The pick list on paper, with its fonts inside. Nothing is loaded from elsewhere. */
final class PickListPdf {
  private static final String FAMILY = "Liberation Sans";

  static {
    // It tells of every style sheet and font that it reads.
    XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.WARNING));
  }

  private PickListPdf() {}

  /**
   * @param xhtml well-formed, with a title and a language
   */
  static byte[] of(String xhtml) {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    try {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.usePdfUaAccessibility(true);
      builder.useFont(() -> font("Regular"), FAMILY, 400, FontStyle.NORMAL, true);
      builder.useFont(() -> font("Bold"), FAMILY, 700, FontStyle.NORMAL, true);
      builder.useUriResolver((base, uri) -> null);
      builder.withProducer("Tapeline");
      builder.withHtmlContent(xhtml, null);
      builder.toStream(pdf);
      builder.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return pdf.toByteArray();
  }

  private static InputStream font(String style) {
    return PickListPdf.class.getResourceAsStream("/fonts/LiberationSans-" + style + ".ttf");
  }
}
