package org.tapeline.notify.words;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;

/** The words that all notices of one language share: headings, cautions, reasons, buttons. */
public final class Phrases {
  /** More lines are counted, not written: the page behind the link has all of them. */
  public static final int MOST_IN_A_LIST = 25;

  private final Language language;
  private final Map<String, Sentence> byKey;

  Phrases(Language language, Map<String, Sentence> byKey) {
    this.language = language;
    this.byKey = new TreeMap<>(byKey);
  }

  public Language language() {
    return language;
  }

  /** All keys; the same in every language. */
  public Set<String> keys() {
    return Set.copyOf(byKey.keySet());
  }

  /** The words before their places are filled in. */
  public Sentence sentence(String key) {
    Sentence sentence = byKey.get(key);
    if (sentence == null) {
      throw new IllegalArgumentException("No words in " + language.code() + " for " + key);
    }
    return sentence;
  }

  /** Words without places. */
  public String of(String key) {
    return sentence(key).fill(Facts.none());
  }

  public String of(String key, Facts facts) {
    return sentence(key).fill(facts);
  }

  /** The words as they stand in the middle of a sentence, without a large first letter. */
  public String within(String key) {
    return sentence(key).pattern();
  }

  /** A list of things for staff, said one by one; empty when there are none. */
  public <T> Optional<Letter.Section> list(
      String heading, Collection<T> things, Function<T, String> say) {
    if (things.isEmpty()) {
      return Optional.empty();
    }
    List<String> lines = new ArrayList<>(things.stream().limit(MOST_IN_A_LIST).map(say).toList());
    if (things.size() > MOST_IN_A_LIST) {
      String more = Integer.toString(things.size() - MOST_IN_A_LIST);
      lines.add(of("list.more", Facts.none().with("quantity", more)));
    }
    return Optional.of(new Letter.Section(of(heading), lines));
  }

  /** Why a case was opened, in words; a reason without words of its own gets general ones. */
  public String why(String code, Facts facts) {
    String key = "why." + code;
    return of(byKey.containsKey(key) ? key : "why.other", facts);
  }
}
