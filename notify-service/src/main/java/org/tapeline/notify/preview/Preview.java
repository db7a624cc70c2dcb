package org.tapeline.notify.preview;

import java.util.Optional;
import org.tapeline.notify.text.Gsm;
import org.tapeline.notify.text.TextBody;
import org.tapeline.notify.words.Language;
import org.tapeline.notify.words.Letter;
import org.tapeline.notify.words.Perspicuity;
import org.tapeline.notify.words.ReadingGrade;

/**
 * A letter as its reader gets it, on every channel.
 *
 * @param version of the words
 * @param message the text message; empty when not even its link fits
 * @param segments of the text message
 */
public record Preview(
    String template,
    int version,
    Language language,
    Letter letter,
    String html,
    String plain,
    String message,
    int segments,
    String readability) {

  static Preview of(
      String template, int version, Language language, Letter letter, String html, String plain) {
    Optional<String> message = TextBody.of(letter);
    return new Preview(
        template,
        version,
        language,
        letter,
        html,
        plain,
        message.orElse(""),
        message.map(Gsm::segments).orElse(0),
        readability(letter, language));
  }

  /** How hard the letter reads, by the index of its language. */
  private static String readability(Letter letter, Language language) {
    String body =
        String.join(
            " ",
            letter.headline() + ".",
            letter.happened(),
            letter.now(),
            letter.when(),
            letter.ask());
    return switch (language) {
      case ENGLISH ->
          String.format(
              language.locale(), "grade %.1f (Flesch-Kincaid)", Math.max(0, ReadingGrade.of(body)));
      case SPANISH -> {
        double value = Perspicuity.of(body);
        yield String.format(
            Language.ENGLISH.locale(), "%.0f, %s (INFLESZ)", value, Perspicuity.level(value));
      }
    };
  }

  /** Characters of the text message. */
  public int characters() {
    return message.codePointCount(0, message.length());
  }
}
