package org.tapeline.inventory.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.journal.quarkus.file.CsvAnswer;

@DisplayName("A table as a CSV file")
class CsvAnswerTest {

  @ParameterizedTest
  @ValueSource(strings = {"=1+2", "+1", "-1", "@sum(A1)", "\t=1", "\r=1"})
  @DisplayName("gives text that would be a formula an apostrophe")
  void noFormula(String text) {
    String csv = CsvAnswer.text(List.of("a"), List.of(List.of(text)));
    assertThat(CsvFile.read(csv, Set.of()).rows().getFirst().values().get("a")).startsWith("'");
  }

  @Test
  @DisplayName("leaves numbers numbers, also those below zero")
  void numbers() {
    assertThat(CsvAnswer.text(List.of("pieces"), List.of(List.of(-3))))
        .isEqualTo("pieces\r\n-3\r\n");
  }

  @Test
  @DisplayName("quotes commas, quotes and line ends, has no byte order mark, and nothing is empty")
  void quoting() {
    String csv = CsvAnswer.text(List.of("a", "b"), List.of(Arrays.asList("x,\"y\"\nz", null)));
    assertThat(csv).isEqualTo("a,b\r\n\"x,\"\"y\"\"\nz\",\r\n");
  }

  @Test
  @DisplayName("is offered as a file of its name")
  void file() {
    var answer = CsvAnswer.of("short-list", List.of("a"), List.of());
    assertThat(answer.getHeaderString("Content-Disposition")).contains("\"short-list.csv\"");
    assertThat(answer.getHeaderString("Content-Type")).startsWith("text/csv; charset=utf-8");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CsvAnswer.of("a\"b", List.of("a"), List.of()));
  }

  @Test
  @DisplayName("has one cell for each column")
  void cells() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> CsvAnswer.text(List.of("a", "b"), List.of(List.of("only one"))));
  }
}
