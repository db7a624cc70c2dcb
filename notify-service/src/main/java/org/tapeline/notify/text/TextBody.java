package org.tapeline.notify.text;

import java.util.Optional;
import java.util.stream.Stream;
import org.tapeline.notify.words.Letter;

/** The words of a text message, short enough for {@link #MOST_SEGMENTS}. */
public final class TextBody {
  public static final int MOST_SEGMENTS = 2;

  private TextBody() {}

  /**
   * The letter's short words; its headline and link when these are too long (a long place name, a
   * name in letters that halve the room). Empty when not even that fits: the link is too long.
   */
  public static Optional<String> of(Letter letter) {
    return Stream.of(letter.text(), letter.headline() + ". " + letter.link().address())
        .map(Gsm::plain)
        .filter(body -> Gsm.segments(body) <= MOST_SEGMENTS)
        .findFirst();
  }
}
