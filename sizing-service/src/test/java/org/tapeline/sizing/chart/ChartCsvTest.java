package org.tapeline.sizing.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.tapeline.sizing.chart.DemoLikeChart.modelA;
import static org.tapeline.sizing.chart.DemoLikeChart.range;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.csv.ImportAnswer.Mode;

@DisplayName("Charts that are written out")
class ChartCsvTest {
  private static final String HEADER = "model,size,from,to,unit\n";

  @Test
  @DisplayName("stand in the unit and with the digits in which they were imported")
  void sameFile() {
    String file =
        HEADER
            + "model-a,youth-small,495,520,mm\n"
            + "model-a,youth-medium,520.5,556,mm\n"
            + "model-b,small,19.25,20.5,in\n"
            + "model-b,medium,20.625,21.7,in\n"
            + "model-c,large,53.3,55.1,cm\n";
    assertThat(written(imported(file))).isEqualTo(file);
  }

  @Test
  @DisplayName("stand in mm where the unit is not known")
  void unknownUnit() {
    assertThat(ChartCsv.write(List.of(modelA()), Map.of()))
        .isEqualTo(
            HEADER
                + "model-a,youth-small,495,520,mm\n"
                + "model-a,youth-medium,520.5,556,mm\n"
                + "model-a,youth-large,559,590,mm\n"
                + "model-a,youth-x-large,590.5,620,mm\n");
  }

  @Test
  @DisplayName("stand in inches, the unit unknown, where mm would not say them to the last digit")
  void onlyInchesAreExact() {
    SizeChart chart =
        new SizeChart("model-b", 1, List.of(range("small", 20.2 * 25.4, 21.2 * 25.4)));
    assertThat(ChartCsv.write(List.of(chart), Map.of()))
        .isEqualTo(HEADER + "model-b,small,20.2,21.2,in\n");
  }

  @Test
  @DisplayName("are the same charts when they are imported again, whatever the unit and the digits")
  void noDrift() {
    Random random = new Random(11);
    for (ChartUnit unit : ChartUnit.values()) {
      for (int i = 0; i < 2000; i++) {
        double mm = unit == ChartUnit.INCH ? 25.4 : unit == ChartUnit.CENTIMETRE ? 10 : 1;
        String from = decimal(random, 400 / mm, 440 / mm);
        String to = decimal(random, 442 / mm, 470 / mm);
        String file = HEADER + "model-a,small," + from + "," + to + "," + unit.code() + "\n";
        List<ImportedChart> once = imported(file);
        List<ImportedChart> again = imported(written(once));
        assertThat(again).as(file).isEqualTo(once);
      }
    }
  }

  private static String decimal(Random random, double least, double most) {
    int decimals = 2 + random.nextInt(5);
    return String.format(Locale.ROOT, "%." + decimals + "f", random.nextDouble(least, most));
  }

  private static List<ImportedChart> imported(String file) {
    List<ImportedChart> charts = new ArrayList<>();
    assertThat(ChartImport.run(file, Mode.ALL_OR_NONE, charts::add).errors()).isEmpty();
    return charts;
  }

  private static String written(List<ImportedChart> charts) {
    Map<String, ChartUnit> units = new HashMap<>();
    charts.forEach(chart -> units.put(chart.model(), chart.unit()));
    return ChartCsv.write(
        charts.stream().map(c -> new SizeChart(c.model(), 1, c.sizes())).toList(), units);
  }
}
