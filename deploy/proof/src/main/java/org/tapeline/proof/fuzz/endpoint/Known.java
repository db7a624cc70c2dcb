package org.tapeline.proof.fuzz.endpoint;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.random.RandomGenerator;

/**
 * Values that mean something to the services, by the name under which they said them: ids of
 * players, tags of helmets. A request that is wrong in one thing should be right in the rest.
 */
public final class Known {
  private static final int MOST = 40;

  private final Map<String, List<String>> values = new TreeMap<>();

  /** Takes in whatever stands in an answer, by field. */
  public synchronized void learn(String name, JsonNode said) {
    if (said.isValueNode() && !said.isNull()) {
      learn(name, said.asText());
    }
    said.properties().forEach(field -> learn(field.getKey(), field.getValue()));
    if (said.isArray()) {
      said.forEach(element -> learn(name, element));
    }
  }

  public synchronized void learn(String name, String value) {
    List<String> of = values.computeIfAbsent(name, n -> new ArrayList<>());
    if (!of.contains(value)) {
      of.add(value);
    }
    // What was said last is most likely still there.
    if (of.size() > MOST) {
      of.remove(0);
    }
  }

  public synchronized boolean knows(String name) {
    return values.containsKey(Words.meant(name)) || Words.OF.containsKey(name);
  }

  /** A value that has this name somewhere; a word of its own where there is none. */
  public synchronized String value(String name, RandomGenerator random) {
    List<String> words = Words.OF.getOrDefault(name, List.of());
    List<String> said = values.getOrDefault(Words.meant(name), List.of());
    if (words.isEmpty() && said.isEmpty()) {
      return "word";
    }
    boolean word = said.isEmpty() || (!words.isEmpty() && random.nextBoolean());
    return Oddities.pick(word ? words : said, random);
  }

  /** A value that means something, though most likely not here. */
  public synchronized String other(RandomGenerator random) {
    List<String> names = List.copyOf(values.keySet());
    return names.isEmpty() ? "word" : value(Oddities.pick(names, random), random);
  }
}
