package org.tapeline.notify.words;

import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/**
 * All templates and phrases in all languages, read once and checked: a missing file, field, phrase,
 * fact or an unknown place refuses to load, so that a gap fails the build and never a notice.
 */
public final class Words {
  private final Map<Language, Phrases> phrases;
  private final Map<Language, Map<String, Template>> templates;

  private Words(Map<Language, Phrases> phrases, Map<Language, Map<String, Template>> templates) {
    this.phrases = phrases;
    this.templates = templates;
  }

  /**
   * Reads the words that come with the service.
   *
   * @throws IllegalStateException when something is missing or does not fit
   */
  public static Words load() {
    Map<Language, Phrases> phrases = new EnumMap<>(Language.class);
    Map<Language, Map<String, Template>> templates = new EnumMap<>(Language.class);
    for (Language language : Language.values()) {
      phrases.put(language, WordsFile.phrases(language));
      Map<String, Template> byName = new HashMap<>();
      for (String name : Template.NAMES) {
        byName.put(name, WordsFile.template(language, name));
      }
      templates.put(language, Map.copyOf(byName));
    }
    refuseGaps(phrases);
    Words words = new Words(phrases, templates);
    words.tryOut();
    return words;
  }

  public Phrases phrases(Language language) {
    return phrases.get(language);
  }

  /**
   * @throws IllegalArgumentException when there is no such template
   */
  public Template template(Language language, String name) {
    Template template = templates.get(language).get(name);
    if (template == null) {
      throw new IllegalArgumentException("No such template: " + name);
    }
    return template;
  }

  /** Writes a letter: the template with the facts filled in. */
  public Letter write(Language language, String name, Facts facts, Letter.Link link) {
    Template t = template(language, name);
    return new Letter(
        language.code(),
        t.subject().fill(facts),
        t.headline().fill(facts),
        t.happened().fill(facts),
        t.now().fill(facts),
        t.when().fill(facts),
        t.ask().fill(facts),
        link,
        t.text().fill(facts.with("link", link.address())));
  }

  /** Writes each letter once with the facts that its notice gets: what is missing shows now. */
  private void tryOut() {
    Letter.Link link = new Letter.Link("label", "https://example.org", true);
    for (Language language : Language.values()) {
      for (String name : Template.NAMES) {
        try {
          write(language, name, SampleFacts.of(name, phrases(language)), link);
        } catch (IllegalArgumentException e) {
          throw new IllegalStateException(name + " in " + language.code() + ": " + e, e);
        }
      }
    }
  }

  private static void refuseGaps(Map<Language, Phrases> phrases) {
    Set<String> expected = phrases.get(Language.ENGLISH).keys();
    phrases.forEach(
        (language, words) -> {
          if (!words.keys().equals(expected)) {
            throw new IllegalStateException(
                "Phrases in " + language.code() + " are not the same as in English");
          }
        });
  }
}
