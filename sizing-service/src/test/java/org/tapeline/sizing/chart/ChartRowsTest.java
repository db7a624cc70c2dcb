package org.tapeline.sizing.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.sizing.csv.ImportAnswer;
import org.tapeline.sizing.csv.ImportAnswer.Mode;
import org.tapeline.sizing.csv.ImportAnswer.RowError;

@DisplayName("The rows of a chart file")
class ChartRowsTest {
  private final List<ImportedChart> kept = new ArrayList<>();

  @ParameterizedTest(name = "{0}")
  @DisplayName("that are wrong are named with row, column, value and what to do")
  @CsvSource(
      delimiter = '|',
      value = {
        "small,500,520,mm;medium,520,540,mm      | 3 | from | 520   | end one before the other",
        "medium,520,540,mm;small,500,520,mm      | 3 | from | 500   | Small (500 to 520 mm) and",
        "small,520,500,mm                        | 2 | to   | 500   | above the start of the range",
        "small,520,520,mm                        | 2 | to   | 520   | swap or correct",
        "small,500,520,mm;medium,53,55,cm        | 3 | unit | cm    | in mm too",
        "small,500,520,mm;,530,550,mm            | 3 | size | ''    | Needed, such as youth-medium",
        "small,500,520,mm;small,530,550,mm       | 3 | size | small | twice for the model, first in"
            + " row 2",
        "petite,500,520,mm                       | 2 | size | petite | small, medium, large or"
            + " x-large",
        "Youth Small,500,520,mm                  | 2 | size | Youth Small | youth- or adult-",
        "small,500,520,pt                        | 2 | unit | pt    | mm, cm and in",
        "small,,520,mm                           | 2 | from | ''    | a number with a decimal"
            + " point",
        "small,500,'52,5',mm                     | 2 | to   | 52,5  | a number with a decimal"
            + " point",
        "small,379,400,mm                        | 2 | from | 379   | Heads measure 380 to 680 mm",
        "small,660,681,mm                        | 2 | to   | 681   | Correct this end",
        "small,50,52,mm                          | 2 | unit | mm    | Is the unit right",
        "small,500,580.5,mm                      | 2 | to   | 580.5 | wider than 80 mm",
        "medium,500,520,mm;small,530,550,mm      | 3 | size | small | Swap the words",
        "youth-large,53,55,cm;youth-medium,56,58,cm | 3 | size | youth-medium | against its word",
        "small,550,560,mm;x-large,500,520,mm     | 3 | size | x-large | correct the ranges",
      })
  void wrong(String rows, long row, String column, String value, String toDo) {
    List<RowError> errors = read(rows).errors();
    assertThat(errors).hasSize(1);
    RowError error = errors.getFirst();
    assertThat(error.row()).isEqualTo(row);
    assertThat(error.column()).isEqualTo(column);
    assertThat(error.value()).isEqualTo(value);
    assertThat(error.message()).contains(toDo);
    assertThat(kept).isEmpty();
  }

  @Test
  @DisplayName("are told of all that is wrong in them at once")
  void allAtOnce() {
    assertThat(read("petite,5x,520,pt;small,500,520,mm;medium,520,540,in").errors())
        .extracting(error -> error.row() + " " + error.column())
        .containsExactly("2 size", "2 unit", "2 from", "4 unit");
    assertThat(read("small,500,520,mm;medium,51,53,cm;large,54,56,cm").errors())
        .extracting(error -> error.row() + " " + error.column())
        .containsExactly("3 unit", "4 unit", "3 from");
  }

  @ParameterizedTest
  @DisplayName("are taken at the edges of what is allowed")
  @ValueSource(
      strings = {
        "small,380,460,mm;medium,600,680,mm",
        "youth-large,50.3,58.3,cm;adult-small,58.4,66.4,cm",
        "x-large,24,26.75,in",
        "medium,500,520,mm;x-large,530,550,mm",
      })
  void edges(String rows) {
    assertThat(read(rows).errors()).isEmpty();
    assertThat(kept).hasSize(1);
  }

  @Test
  @DisplayName("may leave a gap, and are warned of one that is wider than 10 mm")
  void gaps() {
    assertThat(read("medium,530.5,550,mm;small,500,520,mm;large,560,580,mm").errors()).isEmpty();
    List<RowError> warnings = kept.getFirst().warnings();
    assertThat(warnings).hasSize(1);
    RowError gap = warnings.getFirst();
    assertThat(gap.row()).isEqualTo(2);
    assertThat(gap.column()).isEqualTo("from");
    assertThat(gap.value()).isEqualTo("530.5");
    assertThat(gap.message())
        .contains("Small (500 to 520 mm) and Medium (530.5 to 550 mm)", "maker's chart");
  }

  private ImportAnswer read(String rows) {
    StringBuilder csv = new StringBuilder("model,size,from,to,unit\n");
    for (String row : rows.split(";")) {
      csv.append("model-e,").append(row.replace('\'', '"')).append('\n');
    }
    return ChartImport.run(csv.toString(), Mode.ALL_OR_NONE, kept::add);
  }
}
