package org.tapeline.notify.words;

import io.quarkus.qute.CheckedTemplate;
import io.quarkus.qute.TemplateInstance;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import org.eclipse.microprofile.config.inject.ConfigProperty;

/** Lays a letter out as a mail: once as plain text, once as HTML, with the same words. */
@ApplicationScoped
public class LetterLayout {
  private final Words words;
  private final Duration validFor;

  LetterLayout(Words words, @ConfigProperty(name = "tapeline.link.valid-for") Duration validFor) {
    this.words = words;
    this.validFor = validFor;
  }

  /**
   * @param turnOff where such news can be turned off; empty for what cannot
   * @param contact where the reader says how and when to be written to; empty for staff
   */
  public String plain(Letter letter, String turnOff, String contact) {
    return Templates.plain(
            letter, phrases(letter), why(letter, turnOff), expires(letter), turnOff, contact)
        .render();
  }

  /** As {@link #plain}. */
  public String html(Letter letter, String turnOff, String contact) {
    return Templates.html(
            letter, phrases(letter), why(letter, turnOff), expires(letter), turnOff, contact)
        .render();
  }

  private Phrases phrases(Letter letter) {
    return words.phrases(Language.of(letter.language()).orElseThrow());
  }

  private String why(Letter letter, String turnOff) {
    if (!turnOff.isEmpty()) {
      return phrases(letter).of("why-mail.news");
    }
    return phrases(letter).of(letter.link().personal() ? "why-mail" : "why-mail.staff");
  }

  private String expires(Letter letter) {
    Facts days = Facts.none().with("days", Long.toString(validFor.toDays()));
    return letter.link().personal() ? phrases(letter).of("link.expires", days) : "";
  }

  @CheckedTemplate(basePath = "letter")
  static class Templates {
    private Templates() {}

    static native TemplateInstance plain(
        Letter letter, Phrases phrases, String why, String expires, String turnOff, String contact);

    static native TemplateInstance html(
        Letter letter, Phrases phrases, String why, String expires, String turnOff, String contact);
  }
}
