package org.tapeline.notify.words;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Says the facts of a letter in another language: dates, times, lists of names, and what is put
 * together from our phrases. Names stay as they are, and so does what is not known to be ours.
 */
public final class Translation {
  /** A phrase with less text of its own would be found in anything. */
  private static final int LEAST_OWN_TEXT = 4;

  private static final Pattern TIME = Pattern.compile("\\d{1,2}:\\d{2} (?:[AP]M|[ap]\\. m\\.)");
  private static final Pattern BETWEEN_SENTENCES =
      Pattern.compile("(?<=[.!?])\\s+(?=[¿¡]?\\p{Lu})");

  private static final Pattern LAST_NAME = Pattern.compile("(.+) (and|or|y|e|o|u) (.+)");

  /** The facts in which several children or teams may be named. */
  private static final Set<String> NAMED = Set.of("player", "team", "time");

  private final Phrases from;
  private final Phrases to;

  private Translation(Phrases from, Phrases to) {
    this.from = from;
    this.to = to;
  }

  public static Facts of(Facts facts, Phrases from, Phrases to) {
    Translation translation = new Translation(from, to);
    Facts said = facts;
    for (Map.Entry<String, String> fact : new TreeMap<>(facts.byName()).entrySet()) {
      said = said.with(fact.getKey(), translation.fact(fact.getKey(), fact.getValue()));
    }
    return said;
  }

  /** Words of our own that stand outside a letter's sentences, such as the label of its link. */
  public static String of(String phrase, Phrases from, Phrases to) {
    return new Translation(from, to).phrase(phrase).orElse(phrase);
  }

  private String fact(String name, String value) {
    return phrase(value).or(() -> sentences(value)).orElseGet(() -> other(name, value));
  }

  /** As many sentences at a time as are one of our phrases; empty when none of them is. */
  private Optional<String> sentences(String value) {
    List<String> all = List.of(BETWEEN_SENTENCES.split(value));
    List<String> said = new ArrayList<>();
    int at = 0;
    while (at < all.size()) {
      int end = all.size();
      Optional<String> phrase = Optional.empty();
      while (end > at && phrase.isEmpty()) {
        phrase = phrase(String.join(" ", all.subList(at, end)));
        end -= phrase.isEmpty() ? 1 : 0;
      }
      said.add(phrase.orElse(all.get(at)));
      at = Math.max(end, at + 1);
    }
    String joined = String.join(" ", said);
    return joined.equals(value) ? Optional.empty() : Optional.of(joined);
  }

  private Optional<String> phrase(String value) {
    return from.keys().stream()
        .sorted(Comparator.comparingInt(this::ownText).reversed().thenComparing(key -> key))
        .filter(key -> ownText(key) >= LEAST_OWN_TEXT)
        .flatMap(key -> laid(key, value).stream())
        .findFirst();
  }

  private int ownText(String key) {
    return Sentence.PLACE.matcher(from.within(key)).replaceAll("").length();
  }

  private Optional<String> laid(String key, String value) {
    String pattern = from.within(key);
    if (pattern.equals(value)) {
      return Optional.of(to.within(key));
    }
    List<String> places =
        Sentence.PLACE.matcher(pattern).results().map(place -> place.group(1)).toList();
    String regex =
        Arrays.stream(Sentence.PLACE.split(Sentence.startLarge(pattern), -1))
            .map(Pattern::quote)
            .collect(Collectors.joining("(.+?)"));
    Matcher match = Pattern.compile(regex).matcher(value);
    return match.matches() ? said(key, places, match.toMatchResult()) : Optional.empty();
  }

  /** Empty when one place would have to be two things, or more than a part of a sentence. */
  private Optional<String> said(String key, List<String> places, MatchResult match) {
    Map<String, String> read = new LinkedHashMap<>();
    for (int i = 0; i < places.size(); i++) {
      String found = match.group(i + 1);
      String before = read.putIfAbsent(places.get(i), found);
      if (before != null && !before.equals(found) || BETWEEN_SENTENCES.matcher(found).find()) {
        return Optional.empty();
      }
    }
    Facts facts = Facts.none();
    for (Map.Entry<String, String> place : read.entrySet()) {
      facts = facts.with(place.getKey(), other(place.getKey(), place.getValue()));
    }
    return Optional.of(to.of(key, facts));
  }

  /** What is not one of our phrases. */
  private String other(String name, String value) {
    return Moments.date(value, from.language(), to.language())
        .orElseGet(() -> NAMED.contains(name) ? names(times(value)) : times(value));
  }

  private String times(String value) {
    return TIME.matcher(value)
        .replaceAll(
            time ->
                Matcher.quoteReplacement(
                    Moments.time(time.group(), from.language(), to.language())
                        .orElse(time.group())));
  }

  /** {@code Mia, Leo and Ivo} becomes {@code Mia, Leo e Ivo}. */
  private String names(String value) {
    Matcher list = LAST_NAME.matcher(value);
    if (!list.matches()) {
      return value;
    }
    List<String> names = new ArrayList<>(List.of(list.group(1).split(", ")));
    names.add(list.group(3));
    return List.of("or", "o", "u").contains(list.group(2))
        ? NameList.or(names, to.language())
        : NameList.and(names, to.language());
  }
}
