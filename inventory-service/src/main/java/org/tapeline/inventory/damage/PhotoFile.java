package org.tapeline.inventory.damage;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Locale;
import java.util.Set;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.ImageOutputStream;

/** Makes a photo anew from the pixels of what was sent. */
final class PhotoFile {
  private static final Set<String> FORMATS = Set.of("jpeg", "png");
  private static final float QUALITY = 0.82f;

  private static final String NO_PHOTO =
      "This is not a photo that can be read. Take it again, or send a JPEG or PNG file.";
  private static final String TOO_LARGE =
      "The photo is larger than 20 MB. Take it again with fewer pixels.";

  private PhotoFile() {}

  /** By what is in the file; its name and the type that the sender states do not count. */
  static Photo.Taken take(byte[] file) {
    if (file.length > Photo.MOST_BYTES) {
      return Photo.Taken.refused(TOO_LARGE);
    }
    try (ImageInputStream in = ImageIO.createImageInputStream(new ByteArrayInputStream(file))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        return Photo.Taken.refused(NO_PHOTO);
      }
      ImageReader reader = readers.next();
      try {
        return read(reader, in, file);
      } finally {
        reader.dispose();
      }
    } catch (IOException | RuntimeException e) {
      // The reader meets a broken file with exceptions of many kinds.
      return Photo.Taken.refused(NO_PHOTO);
    }
  }

  private static Photo.Taken read(ImageReader reader, ImageInputStream in, byte[] file)
      throws IOException {
    if (!FORMATS.contains(reader.getFormatName().toLowerCase(Locale.ROOT))) {
      return Photo.Taken.refused(NO_PHOTO);
    }
    reader.setInput(in, false, false);
    long width = reader.getWidth(0);
    long height = reader.getHeight(0);
    if (width * height > Photo.MOST_PIXELS) {
      return Photo.Taken.refused(TOO_LARGE);
    }
    // Every n-th pixel is enough for twice the size that is kept, and keeps the memory small.
    int every = (int) Math.max(1, Math.max(width, height) / (2L * Photo.LONGEST));
    ImageReadParam param = reader.getDefaultReadParam();
    param.setSourceSubsampling(every, every, 0, 0);
    BufferedImage pixels = reader.read(0, param);
    BufferedImage upright = upright(pixels, Turn.of(file));
    return Photo.Taken.of(new Photo(jpeg(upright), upright.getWidth(), upright.getHeight()));
  }

  /** Set upright and made smaller, on white where it is transparent. */
  private static BufferedImage upright(BufferedImage from, Turn turn) {
    double scale =
        Math.min(1.0, (double) Photo.LONGEST / Math.max(from.getWidth(), from.getHeight()));
    int wide = Math.max(1, (int) Math.round(from.getWidth() * scale));
    int high = Math.max(1, (int) Math.round(from.getHeight() * scale));
    boolean across = turn.quarters() % 2 == 1;
    BufferedImage to =
        new BufferedImage(across ? high : wide, across ? wide : high, BufferedImage.TYPE_INT_RGB);
    Graphics2D pen = to.createGraphics();
    pen.setColor(Color.WHITE);
    pen.fillRect(0, 0, to.getWidth(), to.getHeight());
    pen.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    AffineTransform move = new AffineTransform();
    move.translate(to.getWidth() / 2.0, to.getHeight() / 2.0);
    move.quadrantRotate(turn.quarters());
    move.scale(turn.mirrored() ? -1 : 1, 1);
    move.translate(-wide / 2.0, -high / 2.0);
    move.scale((double) wide / from.getWidth(), (double) high / from.getHeight());
    pen.drawImage(from, move, null);
    pen.dispose();
    return to;
  }

  private static byte[] jpeg(BufferedImage image) throws IOException {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ImageOutputStream stream = ImageIO.createImageOutputStream(out)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(QUALITY);
      writer.setOutput(stream);
      writer.write(null, new IIOImage(image, null, null), param);
    } finally {
      writer.dispose();
    }
    return out.toByteArray();
  }
}
