package org.tapeline.sizing.growth;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.tapeline.sizing.units.Millimetres;

@DisplayName("The growth reference")
class GrowthReferenceTest {
  private static final GrowthReference KIGGS = Kiggs.reference();
  private static final Optional<Sex> BOY = Optional.of(Sex.MALE);
  private static final Optional<Sex> GIRL = Optional.of(Sex.FEMALE);

  // Robert Koch Institut, KiGGS 2003-2006: worked checks, tolerance 1e-4 (docs/references.md, A).
  @ParameterizedTest
  @DisplayName("agrees with the worked values of KiGGS")
  @CsvSource({"MALE, 10, 550, 0.86669", "FEMALE, 13, 550, 0.41207", "MALE, 16, 600, 2.28675"})
  void workedValues(Sex sex, double age, double mm, double z) {
    assertThat(KIGGS.z(sex, age, new Millimetres(mm))).isCloseTo(z, within(1e-4));
    assertThat(KIGGS.headAtZ(sex, age, z).value()).isCloseTo(mm, within(0.01));
  }

  // The same source: centile 80.694.
  @Test
  @DisplayName("gives the centile of KiGGS")
  void centile() {
    assertThat(KIGGS.below(BOY, 10, new Millimetres(550))).isCloseTo(0.80694, within(1e-5));
  }

  // Median growth, mm a year, from 5 to 17 years, of the same tables (docs/references.md, A).
  @Test
  @DisplayName("grows by the median growth of KiGGS, year by year")
  void growth() {
    double[] boys = {5.0, 4.6, 4.4, 3.8, 3.4, 3.2, 3.6, 5.1, 5.8, 5.0, 4.4, 3.0, 1.8};
    double[] girls = {6.1, 4.3, 3.2, 3.9, 4.9, 5.2, 5.0, 4.9, 3.5, 1.3, 0.9, 0.4, 0.9};
    for (int year = 0; year < boys.length; year++) {
      assertThat(growth(BOY, 5 + year))
          .as("boys at %d", 5 + year)
          .isCloseTo(boys[year], within(0.05));
      assertThat(growth(GIRL, 5 + year))
          .as("girls at %d", 5 + year)
          .isCloseTo(girls[year], within(0.05));
    }
  }

  private static double growth(Optional<Sex> sex, int age) {
    return KIGGS.headAt(sex, age + 1, 0.5).value() - KIGGS.headAt(sex, age, 0.5).value();
  }

  @Test
  @DisplayName("takes girls and boys half each where the sex is not known")
  void unknownSex() {
    Millimetres head = new Millimetres(540);
    double mean = (KIGGS.below(BOY, 11.3, head) + KIGGS.below(GIRL, 11.3, head)) / 2;
    assertThat(KIGGS.below(Optional.empty(), 11.3, head)).isCloseTo(mean, within(1e-12));
    Millimetres back = KIGGS.headAt(Optional.empty(), 11.3, mean);
    assertThat(back.value()).isCloseTo(540, within(1e-6));
  }

  @Test
  @DisplayName("stands still before its first and after its last age")
  void outsideOfItsAges() {
    assertThat(KIGGS.headAt(BOY, 4, 0.5)).isEqualTo(KIGGS.headAt(BOY, 5, 0.5));
    assertThat(KIGGS.headAt(GIRL, 40, 0.9)).isEqualTo(KIGGS.headAt(GIRL, 18, 0.9));
  }

  @Test
  @DisplayName("calls a head unusual beyond the centiles 0.1 and 99.9")
  void unusual() {
    assertThat(KIGGS.place(BOY, 10, KIGGS.headAt(BOY, 10, 0.9989)).unusual()).isFalse();
    HeadForAge large = KIGGS.place(BOY, 10, KIGGS.headAt(BOY, 10, 0.9991));
    assertThat(large.unusual()).isTrue();
    assertThat(large.said()).contains("larger than 999 of 1000", "10 years", "KiGGS");
    assertThat(KIGGS.place(BOY, 10, KIGGS.headAt(BOY, 10, 0.0009)).said()).contains("smaller");
  }

  @ParameterizedTest
  @DisplayName("is refused with the row and what to do when a file is not one")
  @CsvSource({
    "'boy,5,1,51,0.03', 'row 2: sex is male or female'",
    "'male,five,1,51,0.03', 'row 2: age_years is a number'",
    "'male,5,1,510,0.03', 'row 2: M is 30 to 75 cm'",
    "'male,5,1,51,0.03', 'two ages or more of both sexes'"
  })
  void refused(String row, String what) {
    assertThatThrownBy(() -> read(row)).hasMessageContaining(what);
  }

  private static GrowthReference read(String row) throws IOException {
    return GrowthReferenceFile.read("own.csv", new StringReader("sex,age_years,L,M_cm,S\n" + row));
  }
}
