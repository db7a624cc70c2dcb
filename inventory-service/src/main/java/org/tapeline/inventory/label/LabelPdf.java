package org.tapeline.inventory.label;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.TreeMap;
import java.util.logging.Level;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.tapeline.journal.quarkus.file.QrCode;

/** Labels as PDF, each where the sheet has its label; print it at its full size. */
@ApplicationScoped
public class LabelPdf {
  static {
    // It tells of every style sheet that it reads.
    XRLog.listRegisteredLoggers().forEach(logger -> XRLog.setLevel(logger, Level.WARNING));
  }

  private final String publicUrl;

  LabelPdf(@ConfigProperty(name = "tapeline.public-url") String publicUrl) {
    this.publicUrl = publicUrl.replaceAll("/+$", "");
  }

  @CheckedTemplate(basePath = "label")
  static class Templates {
    private Templates() {}

    static native TemplateInstance sheet(LabelSheet sheet, List<List<PlacedLabel>> pages);
  }

  /**
   * @param start the first free label of the first sheet, from 1
   */
  byte[] of(LabelSheet sheet, List<Label> labels, int start) {
    return rendered(Templates.sheet(sheet, pages(sheet, labels, start)).render());
  }

  private List<List<PlacedLabel>> pages(LabelSheet sheet, List<Label> labels, int start) {
    return List.copyOf(
        IntStream.range(0, labels.size())
            .mapToObj(i -> placed(sheet, labels.get(i), start - 1 + i))
            .collect(Collectors.groupingBy(p -> p.spot().page(), TreeMap::new, Collectors.toList()))
            .values());
  }

  private PlacedLabel placed(LabelSheet sheet, Label label, int number) {
    // It rubs against shells and hands: level Q stands a quarter of it gone.
    String address = publicUrl + "/inventory/helmets/" + label.tag();
    String code = QrCode.of(address, ErrorCorrectionLevel.Q, 2, 6);
    return new PlacedLabel(label, sheet.spot(number), code, sheet.tagPoints(label.tag()));
  }

  private static byte[] rendered(String xhtml) {
    ByteArrayOutputStream pdf = new ByteArrayOutputStream();
    try {
      PdfRendererBuilder builder = new PdfRendererBuilder();
      builder.useUriResolver((base, uri) -> uri.startsWith("data:") ? uri : null);
      builder.withProducer("Tapeline");
      builder.withHtmlContent(xhtml, null);
      builder.toStream(pdf);
      builder.run();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return pdf.toByteArray();
  }
}
