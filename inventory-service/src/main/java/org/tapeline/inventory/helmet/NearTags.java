package org.tapeline.inventory.helmet;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

/**
 * What tag somebody may have meant: those that one slip of a finger turns into what was typed. The
 * check character leaves few of them: of the tags with one other character, about one in 36.
 */
public final class NearTags {
  private static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

  private NearTags() {}

  /** Tags with a fitting check character that are one mistake away, or look alike. */
  public static Set<String> of(String typed) {
    String text = TagText.written(typed);
    Set<String> near = new LinkedHashSet<>();
    if (!text.matches("[A-Z0-9]{3,30}")) {
      return near;
    }
    Consumer<String> keep = t -> valid(t).ifPresent(near::add);
    lookAlikes(text, keep);
    for (int i = 0; i < text.length(); i++) {
      String before = text.substring(0, i);
      String after = text.substring(i + 1);
      keep.accept(before + after);
      if (!after.isEmpty()) {
        keep.accept(before + after.charAt(0) + text.charAt(i) + after.substring(1));
      }
      for (char c : ALPHABET.toCharArray()) {
        keep.accept(before + c + after);
        keep.accept(before + c + text.charAt(i) + after);
      }
    }
    for (char c : ALPHABET.toCharArray()) {
      keep.accept(text + c);
    }
    near.remove(text);
    return near;
  }

  /** Letters that are read for digits, all of them at once. */
  private static void lookAlikes(String text, Consumer<String> keep) {
    keep.accept(text.replace('O', '0').replace('I', '1'));
    keep.accept(
        text.replace('O', '0')
            .replace('I', '1')
            .replace('S', '5')
            .replace('B', '8')
            .replace('Z', '2'));
  }

  private static Optional<String> valid(String text) {
    try {
      return Optional.of(new AssetTag(text).value());
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
  }
}
