package org.tapeline.journal.quarkus.file;

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

/** A QR code (ISO/IEC 18004) as a picture inside of a page. */
public final class QrCode {
  /** Dots of the picture a module, so that its edges stay sharp on paper. */
  private static final int DOTS = 8;

  /** The quiet zone that the standard asks for, in modules. */
  private static final int QUIET = 4;

  private static final int BLACK = 0x000000;
  private static final int WHITE = 0xFFFFFF;

  private QrCode() {}

  /** A {@code data:} address of a PNG picture; level M stands 15 % of dirt. */
  public static String of(String text) {
    return of(text, ErrorCorrectionLevel.M, QUIET, DOTS);
  }

  /**
   * A {@code data:} address of a PNG picture.
   *
   * @param level how much of it may be gone
   * @param quiet the quiet zone around it, in modules
   * @param dots dots of the picture a module
   */
  public static String of(String text, ErrorCorrectionLevel level, int quiet, int dots) {
    try {
      BitMatrix modules =
          new QRCodeWriter()
              .encode(
                  text,
                  BarcodeFormat.QR_CODE,
                  0,
                  0,
                  Map.of(EncodeHintType.ERROR_CORRECTION, level, EncodeHintType.MARGIN, quiet));
      ByteArrayOutputStream png = new ByteArrayOutputStream();
      ImageIO.write(picture(modules, dots), "png", png);
      return "data:image/png;base64," + Base64.getEncoder().encodeToString(png.toByteArray());
    } catch (WriterException e) {
      throw new IllegalArgumentException("Too long for a QR code: " + text.length(), e);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BufferedImage picture(BitMatrix modules, int dots) {
    BufferedImage picture =
        new BufferedImage(
            modules.getWidth() * dots, modules.getHeight() * dots, BufferedImage.TYPE_BYTE_BINARY);
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        picture.setRGB(x, y, modules.get(x / dots, y / dots) ? BLACK : WHITE);
      }
    }
    return picture;
  }
}
