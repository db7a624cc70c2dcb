package org.tapeline.inventory.label;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.Map;
import javax.imageio.ImageIO;

/**
 * A QR code (ISO/IEC 18004) for a label that rubs against shells and hands: level Q stands a
 * quarter of it gone.
 */
final class QrPicture {
  private static final int DOTS = 6;
  private static final Map<EncodeHintType, Object> HOW =
      Map.of(EncodeHintType.ERROR_CORRECTION, ErrorCorrectionLevel.Q, EncodeHintType.MARGIN, 2);

  private QrPicture() {}

  /** A {@code data:} address of a PNG picture. */
  static String of(String text) {
    try {
      BitMatrix modules = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, HOW);
      int side = modules.getWidth() * DOTS;
      BufferedImage picture = new BufferedImage(side, side, BufferedImage.TYPE_BYTE_BINARY);
      for (int y = 0; y < side; y++) {
        for (int x = 0; x < side; x++) {
          picture.setRGB(x, y, modules.get(x / DOTS, y / DOTS) ? 0 : 0xFFFFFF);
        }
      }
      ByteArrayOutputStream png = new ByteArrayOutputStream();
      ImageIO.write(picture, "png", png);
      return "data:image/png;base64," + Base64.getEncoder().encodeToString(png.toByteArray());
    } catch (WriterException e) {
      throw new IllegalArgumentException("Too long for a QR code: " + text.length(), e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
