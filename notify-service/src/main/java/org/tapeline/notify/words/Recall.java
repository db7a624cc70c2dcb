package org.tapeline.notify.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds the facts of a letter that was written before by laying it over its template. The facts are
 * kept nowhere apart from the words, so that erasing the words erases all.
 */
public final class Recall {
  private final Map<String, String> known = new TreeMap<>();

  /** Read where a sentence starts with it, so that its first letter may have been small. */
  private final Map<String, String> atStart = new TreeMap<>();

  private Recall() {}

  /**
   * Empty when the words were others than those of the template now: what comes back writes exactly
   * this letter again.
   */
  public static Optional<Facts> of(Words words, Language language, String name, Letter letter) {
    Recall recall = new Recall();
    recall.known.put("link", letter.link().address());
    List<Sentence> sentences = words.template(language, name).sentences();
    List<String> written = written(letter);
    for (int i = 0; i < sentences.size(); i++) {
      recall.lay(sentences.get(i).pattern(), written.get(i));
    }
    recall.atStart.forEach(recall.known::putIfAbsent);
    Facts facts = Facts.none();
    for (Map.Entry<String, String> fact : recall.known.entrySet()) {
      facts = facts.with(fact.getKey(), fact.getValue());
    }
    return same(words, language, name, facts, letter) ? Optional.of(facts) : Optional.empty();
  }

  private static List<String> written(Letter letter) {
    return List.of(
        letter.subject(),
        letter.headline(),
        letter.happened(),
        letter.now(),
        letter.when(),
        letter.ask(),
        letter.text());
  }

  private static boolean same(
      Words words, Language language, String name, Facts facts, Letter letter) {
    try {
      return words.write(language, name, facts, letter.link()).equals(letter);
    } catch (IllegalArgumentException missing) {
      return false;
    }
  }

  private void lay(String pattern, String written) {
    StringBuilder regex = new StringBuilder();
    List<MatchResult> places = Sentence.PLACE.matcher(pattern).results().toList();
    List<String> asked = new ArrayList<>();
    int at = 0;
    for (MatchResult place : places) {
      regex.append(literal(pattern.substring(at, place.start()), at == 0));
      String fact = place.group(1);
      if (known.containsKey(fact)) {
        regex.append(literal(known.get(fact), place.start() == 0));
      } else {
        asked.add(fact);
        regex.append("(.+?)");
      }
      at = place.end();
    }
    regex.append(literal(pattern.substring(at), at == 0));
    Matcher match = Pattern.compile(regex.toString()).matcher(written);
    if (match.matches()) {
      for (int i = 0; i < asked.size(); i++) {
        boolean first = match.start(i + 1) == 0;
        (first ? atStart : known).putIfAbsent(asked.get(i), match.group(i + 1));
      }
    }
  }

  private static String literal(String text, boolean first) {
    return Pattern.quote(first ? Sentence.startLarge(text) : text);
  }
}
