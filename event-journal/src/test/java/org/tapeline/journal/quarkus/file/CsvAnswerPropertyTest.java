package org.tapeline.journal.quarkus.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;

@Label("A table for a spreadsheet")
class CsvAnswerPropertyTest {
  private static final List<String> HEADER = List.of("one", "two", "three");

  @Property
  @Label("has no cell that is a formula, and loses nothing of any text")
  void nothingIsReckoned(
      @ForAll("cells") String one, @ForAll("cells") String two, @ForAll("cells") String three)
      throws IOException {
    String csv = CsvAnswer.text(HEADER, List.of(List.of(one, two, three)));
    try (CSVParser parser = CSVParser.parse(new StringReader(csv), CSVFormat.RFC4180)) {
      List<String> read = parser.getRecords().get(1).stream().toList();
      assertThat(read).hasSize(3).noneMatch(cell -> cell.matches("(?s)[=+\\-@\\t\\r].*"));
      assertThat(read)
          .zipSatisfy(
              List.of(one, two, three),
              (cell, said) -> assertThat(cell).isIn(said, "'" + said).endsWith(said));
    }
  }

  @Property
  @Label("keeps numbers as they are, those below zero too")
  void numbers(@ForAll int whole, @ForAll double real) {
    String csv = CsvAnswer.text(HEADER, List.of(List.of(whole, real, "")));
    assertThat(csv).contains("\r\n" + whole + "," + real + ",");
  }

  @Provide
  Arbitrary<String> cells() {
    Arbitrary<String> tail =
        Arbitraries.strings().withChars("=+-@\t\r\n,\"';|! aZ0\u00e9\u2028").ofMaxLength(8);
    return Arbitraries.of("", "=", "+", "-", "@", "\t", "\r", "\n", "\"", "'", " ", "a")
        .flatMap(first -> tail.map(rest -> first + rest));
  }
}
