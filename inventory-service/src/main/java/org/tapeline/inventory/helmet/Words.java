package org.tapeline.inventory.helmet;

import io.quarkus.qute.TemplateExtension;
import java.util.Locale;
import java.util.UUID;

/** How codes are said to people. */
@TemplateExtension(namespace = "say")
public final class Words {
  private Words() {}

  /**
   * {@code youth-x-large} is said {@code Youth extra large}, {@code pad-15mm} {@code Pad 15 mm}.
   */
  public static String code(String code) {
    String words =
        code.replace("x-large", "extra large")
            .replace('-', ' ')
            .replaceAll("([0-9])mm\\b", "$1 mm");
    return words.isEmpty()
        ? ""
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** {@code model-a} is said {@code Model A}. */
  public static String model(String code) {
    int last = code.lastIndexOf('-') + 1;
    return code(code.substring(0, last)) + code.substring(last).toUpperCase(Locale.ROOT);
  }

  /** A part, or a helmet of a model and size. */
  public static String item(String item) {
    String[] words = item.split(":");
    return words.length == 3 ? "Helmet " + model(words[1]) + ", " + code(words[2]) : code(item);
  }

  /** The short form of an id, to be read out and searched for: its last eight characters. */
  public static String shortly(UUID id) {
    return id.toString().substring(28);
  }
}
