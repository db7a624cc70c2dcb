package org.tapeline.sizing.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.tapeline.sizing.chart.DemoLikeChart;
import org.tapeline.sizing.chart.SizeChart;
import org.tapeline.sizing.growth.GrowthReference;
import org.tapeline.sizing.growth.Kiggs;
import org.tapeline.sizing.growth.Sex;
import org.tapeline.sizing.units.Millimetres;

/**
 * The bands of the size mix against real heads: US children, Snyder and others 1977, UM-HSRI-77-17,
 * a sample of the survey; read by a reference of other children at another time, KiGGS.
 */
@DisplayName("The size mix")
class SizeMixCoverageTest {
  private static final GrowthReference KIGGS = Kiggs.reference();
  private static final SizeChart CHART = DemoLikeChart.modelA();
  private static final int SPLITS = 100;

  private record Child(Optional<Sex> sex, double age, double mm) {}

  @Test
  @DisplayName("fitted on a half of the US sample covers the counts of the other half as it says")
  void covers() throws IOException {
    List<Child> children = children();
    Random random = new Random(1977);
    int covered = 0;
    int counted = 0;
    for (int split = 0; split < SPLITS; split++) {
      Collections.shuffle(children, random);
      List<Child> fitted = children.subList(0, children.size() / 2);
      List<Child> heldOut = children.subList(children.size() / 2, children.size());
      SizeMix mix = new SizeMix(CHART, KIGGS, OwnHeads.of(fitted.stream().map(this::own).toList()));
      List<CountDistribution> counts =
          mix.counts(
              List.of(), heldOut.stream().map(c -> new SizeMix.Unknown(c.sex(), c.age())).toList());
      for (int size = 0; size < counts.size(); size++) {
        long really = really(heldOut, size);
        CountDistribution band = counts.get(size);
        counted++;
        if (band.quantile(0.05) <= really && really <= band.quantile(0.95)) {
          covered++;
        }
      }
    }
    double share = (double) covered / counted;
    System.out.printf(
        Locale.ROOT,
        "Size mix: 90 %% bands cover %.1f %% of %d held-out counts (US children 1977)%n",
        100 * share,
        counted);
    assertThat(share).isBetween(0.86, 0.94);
  }

  private OwnHeads.Head own(Child c) {
    return new OwnHeads.Head(
        OwnHeads.Group.of(c.sex(), c.age()),
        KIGGS.z(c.sex().orElseThrow(), c.age(), new Millimetres(c.mm())));
  }

  private static long really(List<Child> children, int size) {
    double from = CHART.sizes().get(size).from().value();
    boolean last = size + 1 == CHART.sizes().size();
    double to =
        last ? CHART.sizes().get(size).to().value() : CHART.sizes().get(size + 1).from().value();
    return children.stream().filter(c -> from <= c.mm() && c.mm() < to).count();
  }

  private static List<Child> children() throws IOException {
    CSVFormat format = CSVFormat.DEFAULT.builder().setHeader().setSkipHeaderRecord(true).get();
    List<Child> children = new ArrayList<>();
    try (Reader reader =
            new InputStreamReader(
                SizeMixCoverageTest.class.getResourceAsStream("/heads/us-children-1977.csv"),
                StandardCharsets.UTF_8);
        CSVParser parser = CSVParser.parse(reader, format)) {
      for (CSVRecord row : parser) {
        double age = Double.parseDouble(row.get("age_years"));
        if (age >= 5 && age < 18) {
          Sex sex = row.get("sex").equals("male") ? Sex.MALE : Sex.FEMALE;
          double mm = Double.parseDouble(row.get("head_circumference_mm"));
          children.add(new Child(Optional.of(sex), age, mm));
        }
      }
    }
    return children;
  }
}
