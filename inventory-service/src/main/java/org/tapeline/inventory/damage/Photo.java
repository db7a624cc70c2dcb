package org.tapeline.inventory.damage;

import java.util.Optional;

/**
 * A photo as it is kept: made anew from its pixels, so that nothing that the camera wrote into the
 * file (such as where it was taken) is left.
 *
 * @param jpeg the file
 * @param width in pixels, at most {@link #LONGEST}
 * @param height in pixels, at most {@link #LONGEST}
 */
record Photo(byte[] jpeg, int width, int height) {
  /** Pixels of the longer side; a crack of 1 mm is still seen on a helmet that fills the photo. */
  static final int LONGEST = 1600;

  /** What a phone may send: 20 MB. */
  static final int MOST_BYTES = 20 * 1024 * 1024;

  /** A larger one is not a phone's photo but a file made to fill the memory. */
  static final long MOST_PIXELS = 120_000_000L;

  /** The photo, or the sentence that says why it cannot be taken. */
  record Taken(Optional<Photo> photo, String refused) {
    static Taken of(Photo photo) {
      return new Taken(Optional.of(photo), "");
    }

    static Taken refused(String sentence) {
      return new Taken(Optional.empty(), sentence);
    }
  }
}
