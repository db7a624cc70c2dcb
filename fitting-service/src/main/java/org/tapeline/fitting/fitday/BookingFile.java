package org.tapeline.fitting.fitday;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.tapeline.journal.EventJson;

/** Reads the weights that come with the service. */
final class BookingFile {
  private static final String BUILT_IN = "/fitday/booking.json";

  private BookingFile() {}

  /**
   * @throws UncheckedIOException when the file is missing or says what cannot be
   */
  static BookingWeights builtIn() {
    try (InputStream in = BookingFile.class.getResourceAsStream(BUILT_IN)) {
      return EventJson.MAPPER.readValue(in, BookingWeights.class);
    } catch (IOException e) {
      throw new UncheckedIOException("The booking weights " + BUILT_IN + " cannot be used", e);
    }
  }
}
