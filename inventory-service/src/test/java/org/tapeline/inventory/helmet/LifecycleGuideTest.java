package org.tapeline.inventory.helmet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.inventory.helmet.Helmet.State;
import org.tapeline.inventory.helmet.Lifecycle.Step;

@DisplayName("The guide to a helmet's life")
class LifecycleGuideTest {

  @Test
  @DisplayName("has the table of moves that the rules have")
  void sameTable() throws IOException {
    Path guide = Path.of(System.getProperty("tapeline.root", "..")).resolve("docs/helmet-life.md");
    List<List<String>> table =
        Files.readAllLines(guide).stream()
            .filter(line -> line.startsWith("|") && !line.startsWith("| ---"))
            .map(LifecycleGuideTest::cells)
            .toList();
    assertThat(table.getFirst().subList(1, table.getFirst().size()))
        .containsExactlyElementsOf(Arrays.stream(State.values()).map(State::says).toList());
    Set<Step> told = new HashSet<>();
    for (List<String> row : table.subList(1, table.size())) {
      Step step = Step.valueOf(row.getFirst().toUpperCase(Locale.ROOT).replace(' ', '_'));
      told.add(step);
      for (State state : State.values()) {
        assertThat(row.get(1 + state.ordinal()))
            .as(step + " when " + state.says())
            .isEqualTo(Lifecycle.allows(state, step) ? "yes" : "");
      }
    }
    assertThat(told).containsExactlyInAnyOrder(Step.values());
  }

  private static List<String> cells(String line) {
    return Arrays.stream(line.substring(1, line.lastIndexOf('|')).split("\\|", -1))
        .map(String::strip)
        .toList();
  }
}
