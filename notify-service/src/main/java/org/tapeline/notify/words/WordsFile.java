package org.tapeline.notify.words;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Properties;
import java.util.Set;

/** Reads one file of words: {@code words/<language>/<name>.properties}, UTF-8. */
final class WordsFile {
  private static final Set<String> FIELDS =
      Set.of("version", "subject", "headline", "happened", "now", "when", "ask", "text");

  private WordsFile() {}

  static Template template(Language language, String name) {
    Properties words = read(language, name);
    if (!words.stringPropertyNames().equals(FIELDS)) {
      throw new IllegalStateException(
          where(language, name) + " needs exactly the fields " + FIELDS);
    }
    return new Template(
        name,
        Integer.parseInt(words.getProperty("version")),
        sentence(words, "subject", language, name),
        sentence(words, "headline", language, name),
        sentence(words, "happened", language, name),
        sentence(words, "now", language, name),
        sentence(words, "when", language, name),
        sentence(words, "ask", language, name),
        sentence(words, "text", language, name));
  }

  static Phrases phrases(Language language) {
    Properties words = read(language, "phrases");
    Map<String, Sentence> byKey = new HashMap<>();
    for (String key : words.stringPropertyNames()) {
      byKey.put(key, sentence(words, key, language, "phrases"));
    }
    return new Phrases(language, byKey);
  }

  private static Sentence sentence(Properties words, String field, Language language, String name) {
    try {
      Sentence sentence = new Sentence(words.getProperty(field));
      if (!Facts.NAMES.containsAll(sentence.places())) {
        throw new IllegalArgumentException("Unknown places: " + sentence.places());
      }
      return sentence;
    } catch (IllegalArgumentException e) {
      throw new IllegalStateException(where(language, name) + ", " + field + ": " + e, e);
    }
  }

  private static Properties read(Language language, String name) {
    String path = where(language, name);
    try (InputStream in = Words.class.getResourceAsStream("/" + path)) {
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

  private static String where(Language language, String name) {
    return "words/" + language.code() + "/" + name + ".properties";
  }
}
