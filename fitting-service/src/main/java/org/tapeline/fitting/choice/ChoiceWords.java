package org.tapeline.fitting.choice;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The words of the page on which a guardian chooses, from {@code choice/<language>.properties},
 * UTF-8. Words that one language lacks, or with other places to fill in, refuse to load.
 */
public final class ChoiceWords {
  private static final Pattern PLACE = Pattern.compile("\\{([a-z]+)}");

  private final ChoiceLanguage language;
  private final Properties words;

  private ChoiceWords(ChoiceLanguage language, Properties words) {
    this.language = language;
    this.words = words;
  }

  /**
   * @throws IllegalStateException when the languages do not say the same
   */
  static Map<ChoiceLanguage, ChoiceWords> load() {
    Map<ChoiceLanguage, ChoiceWords> all = new EnumMap<>(ChoiceLanguage.class);
    for (ChoiceLanguage language : ChoiceLanguage.values()) {
      all.put(language, new ChoiceWords(language, read(language)));
    }
    ChoiceWords english = all.get(ChoiceLanguage.ENGLISH);
    for (ChoiceWords other : all.values()) {
      if (!other.keys().equals(english.keys())
          || other.keys().stream().anyMatch(k -> !other.places(k).equals(english.places(k)))) {
        throw new IllegalStateException("The words in " + other.language + " differ from English");
      }
    }
    return all;
  }

  public String language() {
    return language.code();
  }

  Set<String> keys() {
    return words.stringPropertyNames();
  }

  private Set<String> places(String key) {
    Set<String> places = new TreeSet<>();
    PLACE.matcher(words.getProperty(key)).results().forEach(m -> places.add(m.group(1)));
    return places;
  }

  public String of(String key) {
    return of(key, Map.of());
  }

  /**
   * @throws IllegalArgumentException when there are no such words, or a fact is missing
   */
  public String of(String key, Map<String, String> facts) {
    String pattern = words.getProperty(key);
    if (pattern == null || !facts.keySet().containsAll(places(key))) {
      throw new IllegalArgumentException("No words, or not all facts, for " + key);
    }
    return PLACE
        .matcher(pattern)
        .replaceAll(place -> Matcher.quoteReplacement(facts.get(place.group(1))));
  }

  private static Properties read(ChoiceLanguage language) {
    String path = "/choice/" + language.code() + ".properties";
    try (InputStream in = ChoiceWords.class.getResourceAsStream(path)) {
      if (in == null) {
        throw new IllegalStateException("Words are missing: " + path);
      }
      Properties words = new Properties();
      words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
      return words;
    } catch (IOException e) {
      throw new UncheckedIOException("Words cannot be read: " + path, e);
    }
  }
}
