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

  public String plain(Letter letter) {
    return Templates.plain(letter, phrases(letter), why(letter), expires(letter)).render();
  }

  public String html(Letter letter) {
    return Templates.html(letter, phrases(letter), why(letter), expires(letter)).render();
  }

  private Phrases phrases(Letter letter) {
    return words.phrases(Language.of(letter.language()).orElseThrow());
  }

  private String why(Letter letter) {
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
        Letter letter, Phrases phrases, String why, String expires);

    static native TemplateInstance html(Letter letter, Phrases phrases, String why, String expires);
  }
}
