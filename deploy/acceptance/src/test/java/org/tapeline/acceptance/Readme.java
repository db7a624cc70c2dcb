package org.tapeline.acceptance;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The lines of the README's main job, typed into a shell as a reader would type them, with the ids
 * from earlier answers put in.
 */
final class Readme {
  private static final Pattern BLOCK = Pattern.compile("```sh\\n(id\\(\\).*?)```", Pattern.DOTALL);

  private final String helpers;
  private final List<String> lines = new ArrayList<>();
  private final Map<String, String> values = new HashMap<>();

  Readme() {
    Matcher block = BLOCK.matcher(text());
    assertThat(block.find()).as("the README has the lines of the main job").isTrue();
    StringBuilder shell = new StringBuilder();
    for (String line : block.group(1).split("\n")) {
      if (line.startsWith("api ")) {
        lines.add(line);
      } else if (line.startsWith("T=")) {
        shell.append("T=").append(Tapeline.address()).append('\n');
      } else if (!line.startsWith("#")) {
        shell.append(line).append('\n');
      }
    }
    helpers = shell.toString();
  }

  /** From now on what the README calls so is this. */
  void put(String name, String value) {
    values.put(name, value);
  }

  /** Types the next line that has not been typed yet; it must hold these words. */
  String type(String words) {
    String line = lines.removeFirst();
    assertThat(line).contains(words);
    for (Map.Entry<String, String> value : values.entrySet()) {
      line = line.replaceAll("\\b" + value.getKey() + "\\b", value.getValue());
    }
    try {
      Process shell =
          new ProcessBuilder("bash", "-c", helpers + line)
              .directory(Tapeline.ROOT.toFile())
              .redirectErrorStream(true)
              .start();
      return new String(shell.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  boolean isAtItsEnd() {
    return lines.isEmpty();
  }

  private static String text() {
    try {
      return Files.readString(Tapeline.ROOT.resolve("README.md"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
