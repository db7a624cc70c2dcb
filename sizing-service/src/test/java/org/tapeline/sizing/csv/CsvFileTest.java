package org.tapeline.sizing.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.journal.quarkus.http.Problem;
import org.tapeline.sizing.csv.CsvFile.Row;

@DisplayName("A CSV file")
class CsvFileTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "model,size\nmodel-a,small\nmodel-b,large\n",
        "model,size\nmodel-a,small\nmodel-b,large",
        "model,size\r\nmodel-a,small\r\nmodel-b,large\r\n",
        "\ufeffmodel,size\nmodel-a,small\nmodel-b,large\n",
        "size,model\nsmall,model-a\nlarge,model-b\n",
        "\"model\",\"size\"\n\"model-a\" , small\n model-b,\"large\"\n",
      })
  @DisplayName("is read with any line end, byte order mark, order of columns and quotes")
  void read(String text) {
    assertThat(CsvFile.read(text, Set.of("model", "size")).rows())
        .extracting(row -> row.line() + " " + row.get("model") + " " + row.get("size"))
        .containsExactly("2 model-a small", "3 model-b large");
  }

  @Test
  @DisplayName("numbers rows by their line, also after empty lines")
  void lines() {
    assertThat(CsvFile.read("model\nmodel-a\n\nmodel-b\n", Set.of("model")).rows())
        .extracting(Row::line)
        .containsExactly(2L, 4L);
  }

  @Test
  @DisplayName("may lack optional columns and the end of a row")
  void optional() {
    Row row = CsvFile.read("model,size,unit\nmodel-a\n", Set.of("model")).rows().getFirst();
    assertThat(row.get("unit")).isEmpty();
    assertThat(row.get("colour")).isEmpty();
  }

  @Test
  @DisplayName("without a needed column is refused, and all missing ones are named")
  void columnsMissing() {
    assertThatThrownBy(() -> CsvFile.read("model\nmodel-a\n", Set.of("model", "unit", "size")))
        .isInstanceOf(Problem.class)
        .hasMessageContaining("Missing: size, unit.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "model,model\na,b\n", "model,size\n\"model-a,small\n"})
  @DisplayName("that is none is refused with a sentence, never with a failure")
  void notCsv(String text) {
    assertThatThrownBy(() -> CsvFile.read(text, Set.of("model"))).isInstanceOf(Problem.class);
  }
}
