package org.tapeline.inventory.damage;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import javax.imageio.ImageIO;

/** Photos for tests: the left half red, the right half blue. */
public final class Pictures {
  private Pictures() {}

  public static byte[] of(String format, int width, int height) {
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = image.createGraphics();
    pen.setColor(Color.RED);
    pen.fillRect(0, 0, width / 2, height);
    pen.setColor(Color.BLUE);
    pen.fillRect(width / 2, 0, width - width / 2, height);
    pen.dispose();
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      ImageIO.write(image, format, out);
      return out.toByteArray();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A JPEG as a camera writes it: how it was held, and words beside the pixels. */
  public static byte[] byCamera(int width, int height, int orientation, String words) {
    byte[] plain = of("jpeg", width, height);
    byte[] text = words.getBytes(StandardCharsets.US_ASCII);
    ByteBuffer exif = ByteBuffer.allocate(6 + 8 + 2 + 12 + 4 + text.length);
    exif.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
    exif.put("MM\0*".getBytes(StandardCharsets.US_ASCII)).putInt(8);
    exif.putShort((short) 1).putShort((short) 0x0112).putShort((short) 3).putInt(1);
    exif.putShort((short) orientation).putShort((short) 0).putInt(0).put(text);
    ByteBuffer file = ByteBuffer.allocate(plain.length + 4 + exif.capacity());
    file.put(plain, 0, 2).putShort((short) 0xFFE1).putShort((short) (2 + exif.capacity()));
    file.put(exif.array()).put(plain, 2, plain.length - 2);
    return file.array();
  }
}
