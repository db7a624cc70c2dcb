package org.tapeline.journal.privacy;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * What people can be known by: their names, each word of them for itself, addresses, telephone
 * numbers and days of birth, and where in a text one of these stands.
 */
final class PersonalWords {
  private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}\\p{M}'’]*");

  /**
   * From where an address can begin, and with no more before the {@code @} than RFC 5321 allows: a
   * long text without one is gone through once.
   */
  private static final Pattern EMAIL =
      Pattern.compile("(?<![\\w.%+-])[\\w.%+-]{1,64}+@[\\w-]+(?:\\.[\\w-]+)+");

  private static final Pattern DAY = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}");
  private static final Pattern PHONE = Pattern.compile("\\+?\\(?\\d[\\d ()./-]{7,20}\\d");

  /** Of a number as it is dialled within a country; with fewer it could be any figure. */
  private static final int DIGITS = 10;

  /** Shorter words stand in many a text that is about nobody. */
  private static final int LEAST_LETTERS = 3;

  private final Map<String, String> kinds = new HashMap<>();

  /** How many different words there are to look for. */
  int size() {
    return kinds.size();
  }

  /** What one record of the topic {@code people} tells of a person. */
  void addPerson(JsonNode details) {
    for (String field : List.of("givenName", "familyName", "name")) {
      addName(details.path(field).asText(""));
    }
    add("address", details.path("email").asText("").toLowerCase(Locale.ROOT));
    addPhone(details.path("phone").asText(""));
    add("day of birth", details.path("birthDate").asText(""));
  }

  /** A name, an address, a number or a day, as somebody wrote it down. */
  void addText(String text) {
    String line = text.strip();
    if (line.contains("@")) {
      add("address", line.toLowerCase(Locale.ROOT));
    } else if (DAY.matcher(line).matches()) {
      add("day of birth", line);
    } else if (digits(line).length() >= DIGITS) {
      addPhone(line);
    } else {
      addName(line);
    }
  }

  private void addName(String name) {
    WORD.matcher(name)
        .results()
        .map(MatchResult::group)
        .filter(word -> word.length() >= LEAST_LETTERS)
        .forEach(word -> add("name", word));
  }

  private void addPhone(String phone) {
    String digits = digits(phone);
    if (digits.length() >= DIGITS) {
      add("telephone number", digits.substring(digits.length() - DIGITS));
    }
  }

  private void add(String kind, String word) {
    if (!word.isBlank()) {
      kinds.put(word, kind);
    }
  }

  /** What stands in the text, as what it is and its first letters: a finding must not tell more. */
  Set<String> in(String text) {
    Set<String> found = new LinkedHashSet<>();
    for (Pattern pattern : List.of(WORD, DAY)) {
      pattern.matcher(text).results().forEach(at -> found(at.group()).ifPresent(found::add));
    }
    EMAIL
        .matcher(text)
        .results()
        .forEach(at -> found(at.group().toLowerCase(Locale.ROOT)).ifPresent(found::add));
    PHONE.matcher(text).results().flatMap(at -> numbers(at.group()).stream()).forEach(found::add);
    return found;
  }

  private List<String> numbers(String text) {
    String digits = digits(text);
    boolean dialled = digits.length() >= DIGITS && digits.length() <= DIGITS + 3;
    List<String> numbers = new ArrayList<>();
    if (dialled) {
      found(digits.substring(digits.length() - DIGITS)).ifPresent(numbers::add);
    }
    return numbers;
  }

  private Optional<String> found(String word) {
    return Optional.ofNullable(kinds.get(word))
        .map(kind -> kind + " " + word.substring(0, Math.min(2, word.length())) + "...");
  }

  private static String digits(String text) {
    return text.replaceAll("\\D", "");
  }
}
