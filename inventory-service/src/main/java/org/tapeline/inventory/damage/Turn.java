package org.tapeline.inventory.damage;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * How a camera was held, from a photo's EXIF data (tag 0x0112, orientation): the one thing in it
 * that is needed before all of it is dropped. What cannot be read counts as upright.
 *
 * @param quarters quarter turns clockwise that set it upright, 0 to 3
 * @param mirrored whether it is mirrored left to right before that
 */
record Turn(int quarters, boolean mirrored) {
  static final Turn NONE = new Turn(0, false);

  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);
  private static final int ORIENTATION = 0x0112;
  private static final int ENTRY = 12;
  private static final byte MARKER = (byte) 0xFF;
  private static final byte APP1 = (byte) 0xE1;
  private static final byte START_OF_PIXELS = (byte) 0xDA;

  /** By the number that EXIF has for it, 1 to 8. */
  static Turn of(int orientation) {
    return switch (orientation) {
      case 2 -> new Turn(0, true);
      case 3 -> new Turn(2, false);
      case 4 -> new Turn(2, true);
      case 5 -> new Turn(3, true);
      case 6 -> new Turn(1, false);
      case 7 -> new Turn(1, true);
      case 8 -> new Turn(3, false);
      default -> NONE;
    };
  }

  /** How the camera says it was held; a file that is no JPEG, or does not say, is upright. */
  static Turn of(byte[] file) {
    ByteBuffer jpeg = ByteBuffer.wrap(file);
    int at = 2;
    while (at + 4 <= file.length && file[at] == MARKER && file[at + 1] != START_OF_PIXELS) {
      int length = Short.toUnsignedInt(jpeg.getShort(at + 2));
      int end = Math.min(file.length, at + 2 + length);
      if (file[at + 1] == APP1 && end >= at + 4) {
        Turn turn = ofExif(Arrays.copyOfRange(file, at + 4, end));
        if (!turn.equals(NONE)) {
          return turn;
        }
      }
      at += 2 + length;
    }
    return NONE;
  }

  /**
   * @param app1 a JPEG's APP1 segment, without marker and length
   */
  static Turn ofExif(byte[] app1) {
    if (app1.length < EXIF.length + 8 || !startsWithExif(app1)) {
      return NONE;
    }
    ByteBuffer tiff = ByteBuffer.wrap(app1, EXIF.length, app1.length - EXIF.length).slice();
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    try {
      return ofDirectory(tiff, tiff.getInt(4));
    } catch (IndexOutOfBoundsException e) {
      return NONE;
    }
  }

  private static Turn ofDirectory(ByteBuffer tiff, int directory) {
    int entries = Short.toUnsignedInt(tiff.getShort(directory));
    for (int i = 0; i < entries; i++) {
      int entry = directory + 2 + i * ENTRY;
      if (Short.toUnsignedInt(tiff.getShort(entry)) == ORIENTATION) {
        return of(tiff.getShort(entry + 8));
      }
    }
    return NONE;
  }

  private static boolean startsWithExif(byte[] app1) {
    for (int i = 0; i < EXIF.length; i++) {
      if (app1[i] != EXIF[i]) {
        return false;
      }
    }
    return true;
  }
}
