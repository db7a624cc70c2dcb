package org.tapeline.journal.quarkus.file;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.logging.Level;

/**
 * A page of HTML as PDF, tagged so that it can be read aloud (PDF/UA, ISO 14289-1), with its fonts
 * inside. Nothing is loaded from elsewhere.
 */
public final class PagePdf {
  private static final String FAMILY = "Liberation Sans";

  static {
    // It tells of every style sheet and font that it reads.
    XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.WARNING));
  }

  private PagePdf() {}

  /**
   * @param xhtml well-formed, with a title and a language; pictures only as {@code data:} addresses
   */
  public static byte[] of(String xhtml) {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    try {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.usePdfUaAccessibility(true);
      builder.useFont(() -> font("Regular"), FAMILY, 400, FontStyle.NORMAL, true);
      builder.useFont(() -> font("Bold"), FAMILY, 700, FontStyle.NORMAL, true);
      builder.useUriResolver((base, uri) -> uri.startsWith("data:") ? uri : null);
      builder.withProducer("Tapeline");
      builder.withHtmlContent(printable(xhtml), null);
      builder.toStream(pdf);
      builder.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return pdf.toByteArray();
  }

  /** XML 1.0 has no place for most control characters, section 2.2; on paper they show nothing. */
  private static String printable(String xhtml) {
    return xhtml.codePoints().allMatch(PagePdf::isXml)
        ? xhtml
        : xhtml
            .codePoints()
            .filter(PagePdf::isXml)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString();
  }

  private static boolean isXml(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }

  private static InputStream font(String style) {
    return PagePdf.class.getResourceAsStream("/fonts/LiberationSans-" + style + ".ttf");
  }
}
