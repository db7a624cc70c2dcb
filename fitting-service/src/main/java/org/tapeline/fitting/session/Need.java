package org.tapeline.fitting.session;

import java.util.Optional;

/**
 * Something that a re-fit needs.
 *
 * @param kind {@code helmet} with model and size, or {@code part} with its item; all are codes
 */
public record Need(
    String kind, Optional<String> model, Optional<String> size, Optional<String> item) {
  private static final String CODE = "[a-z0-9][a-z0-9-]{0,59}";
  private static final String PART = "(?!helmet:)[a-z0-9][a-z0-9:-]{0,59}";

  /**
   * @throws IllegalArgumentException for what cannot be looked for in stock
   */
  public Need {
    model = model == null ? Optional.empty() : model;
    size = size == null ? Optional.empty() : size;
    item = item == null ? Optional.empty() : item;
    boolean helmet = "helmet".equals(kind) && is(CODE, model) && is(CODE, size) && item.isEmpty();
    boolean part = "part".equals(kind) && is(PART, item) && model.isEmpty() && size.isEmpty();
    if (!helmet && !part) {
      throw new IllegalArgumentException("A need is a helmet with model and size, or a part");
    }
  }

  private static boolean is(String pattern, Optional<String> value) {
    return value.filter(v -> v.matches(pattern)).isPresent();
  }

  public static Need helmet(String model, String size) {
    return new Need("helmet", Optional.of(model), Optional.of(size), Optional.empty());
  }

  public static Need part(String item) {
    return new Need("part", Optional.empty(), Optional.empty(), Optional.of(item));
  }

  public boolean needsHelmet() {
    return kind.equals("helmet");
  }

  /** What it is, as one word: the same need of the same case has the same key. */
  public String key() {
    return needsHelmet() ? "helmet:" + model.get() + ":" + size.get() : item.get();
  }

  /**
   * The other way round.
   *
   * @throws IllegalArgumentException when the word is no need's key
   */
  public static Need ofKey(String key) {
    String[] words = key.split(":");
    return words.length == 3 && words[0].equals("helmet") ? helmet(words[1], words[2]) : part(key);
  }
}
