package org.tapeline.notify.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.tapeline.notify.notice.NoticeKind;

@DisplayName("The files of words")
class NothingMissingTest {
  private static final Words WORDS = Words.load();
  private static final Path MAIN = Path.of("src/main");

  private static String everything(String folder, String ending) {
    try (Stream<Path> files = Files.walk(MAIN.resolve(folder))) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> file.toString().endsWith(ending))
          .map(NothingMissingTest::read)
          .collect(Collectors.joining("\n"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @ParameterizedTest
  @EnumSource(Language.class)
  @DisplayName("are those that the templates name, no more and no fewer")
  void files(Language language) throws IOException {
    try (Stream<Path> files = Files.list(MAIN.resolve("resources/words/" + language.code()))) {
      Set<String> expected = new TreeSet<>(Template.NAMES);
      expected.add("phrases");
      assertThat(files.map(f -> f.getFileName().toString().replace(".properties", "")))
          .containsExactlyInAnyOrderElementsOf(expected);
    }
  }

  @Test
  @DisplayName("exist for every kind of notice")
  void kinds() {
    for (NoticeKind kind : NoticeKind.values()) {
      assertThat(Template.NAMES)
          .as(kind.code())
          .anyMatch(name -> name.startsWith(kind.code().replaceFirst("-refit$", "")));
    }
  }

  @Test
  @DisplayName("ask for every fact that there is: none is carried for nothing")
  void facts() {
    Set<String> asked = new TreeSet<>();
    Phrases phrases = WORDS.phrases(Language.ENGLISH);
    phrases.keys().forEach(key -> asked.addAll(phrases.sentence(key).places()));
    for (String name : Template.NAMES) {
      WORDS
          .template(Language.ENGLISH, name)
          .sentences()
          .forEach(sentence -> asked.addAll(sentence.places()));
    }
    assertThat(asked).containsExactlyInAnyOrderElementsOf(Facts.NAMES);
  }

  @Test
  @DisplayName("have no phrase that nobody says")
  void phrases() {
    String said = everything("java", ".java") + everything("resources/templates", "");
    for (String key : WORDS.phrases(Language.ENGLISH).keys()) {
      String whole = "[\"']" + Pattern.quote(key) + "[\"']";
      String start = "[\"']" + Pattern.quote(key.replaceFirst("[^.]*$", "")) + "[\"']";
      boolean put =
          said.contains('"' + key.replaceFirst("\\..*", "") + '"')
              && said.contains('"' + key.replaceFirst("^[^.]*", "") + '"');
      assertThat(put || Pattern.compile(whole + "|" + start).matcher(said).find()).as(key).isTrue();
    }
  }
}
