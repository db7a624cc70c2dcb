package org.tapeline.fitting.fieldapp;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.fitting.protocol.Protocols;

@DisplayName("The files that a phone keeps")
class ShellTest {
  private static final Path FOLDER = Path.of("src/main/resources/META-INF/resources/field");

  /** Of the other pages; and made when the service is packaged. */
  private static final Set<String> NOT_KEPT = Set.of("leave.js");

  private static final Set<String> MADE = Set.of("rules.js");

  @Test
  @DisplayName("are all of the field app's: one that is missing would not be there without signal")
  void complete() throws IOException {
    List<String> listed = Files.readAllLines(Path.of("src/main/resources/fieldapp/files.txt"));
    try (Stream<Path> files = Files.walk(FOLDER)) {
      Set<String> there =
          files
              .filter(Files::isRegularFile)
              .map(file -> FOLDER.relativize(file).toString())
              .filter(name -> !NOT_KEPT.contains(name))
              .collect(Collectors.toSet());
      assertThat(listed)
          .doesNotHaveDuplicates()
          .containsExactlyInAnyOrderElementsOf(
              Stream.concat(there.stream(), MADE.stream()).toList());
    }
  }

  @Test
  @DisplayName("come with a build that is the same as long as they are")
  void build() {
    String worker = new Shell(new Protocols()).serviceWorker();
    assertThat(worker).startsWith("const BUILD = '").contains("/fitting/field/app.js");
    assertThat(new Shell(new Protocols()).serviceWorker()).isEqualTo(worker);
  }
}
