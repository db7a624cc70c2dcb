package org.tapeline.sizing.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.tapeline.sizing.reading.ReadingText.Understood;

@Label("Any reading")
class ReadingTextPropertyTest {

  /** An exact length with one of the ways in which it is written. */
  record Written(String text, BigDecimal mm) {}

  @Property
  @Label("on a tape in sixteenths is understood exactly, however it is written")
  void inches(@ForAll("sixteenths") Written written) {
    assertThat(reading(written.text()).length().value())
        .isCloseTo(written.mm().doubleValue(), within(1e-9));
  }

  @Property
  @Label("in whole and tenths of millimetres is understood exactly, in mm and in cm")
  void metric(
      @ForAll @IntRange(min = 3800, max = 6800) int tenths,
      @ForAll("decimalMark") String mark,
      @ForAll("blanks") String blanks) {
    String mm = tenths / 10 + mark + tenths % 10 + blanks + "mm";
    String cm = tenths / 100 + mark + "%02d".formatted(tenths % 100) + blanks + "cm";
    assertThat(reading(mm).length().value()).isCloseTo(tenths / 10.0, within(1e-9));
    assertThat(reading(cm).length().value()).isCloseTo(tenths / 10.0, within(1e-9));
  }

  @Property
  @Label("that is said back is understood again as the same reading")
  void roundTrip(@ForAll("sixteenths") Written written) {
    Reading once = reading(written.text());
    assertThat(reading(once.entered())).isEqualTo(once);
  }

  @Property
  @Label("is either understood as a head's size or refused with an example, never a failure")
  void anyText(@ForAll @StringLength(max = 60) String text) {
    switch (ReadingText.understand(text)) {
      case Understood.Ok ok -> assertThat(ok.reading().length().value()).isBetween(380.0, 686.0);
      case Understood.Not not -> assertThat(not.reason()).contains("22 7/8 in");
    }
  }

  @Provide
  Arbitrary<Written> sixteenths() {
    return Combinators.combine(
            Arbitraries.integers().between(15 * 16, 27 * 16),
            Arbitraries.of(" ", "-", " - ", "  "),
            Arbitraries.of("", " in", "in", "\"", " \"", " inches", "″", "''"))
        .as(
            (parts, gap, unit) -> {
              String fraction = parts % 16 == 0 ? "" : gap + parts % 16 + "/16";
              BigDecimal mm =
                  BigDecimal.valueOf(parts).multiply(new BigDecimal("1.5875")); // 25.4 / 16
              return new Written(parts / 16 + fraction + unit, mm);
            });
  }

  @Provide
  Arbitrary<String> decimalMark() {
    return Arbitraries.of(".", ",");
  }

  @Provide
  Arbitrary<String> blanks() {
    return Arbitraries.of("", " ", "  ");
  }

  private static Reading reading(String text) {
    return switch (ReadingText.understand(text)) {
      case Understood.Ok ok -> ok.reading();
      case Understood.Not not -> throw new AssertionError(text + ": " + not.reason());
    };
  }
}
