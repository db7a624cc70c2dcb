package org.tapeline.sizing.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.tapeline.sizing.reading.ReadingText.Understood;

@DisplayName("A reading as people write it")
class ReadingTextTest {

  @ParameterizedTest(name = "{0} is {1} mm, kept as {2}")
  @DisplayName("is understood and kept exactly")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      value = {
        "22 7/8      | 581.025 | 22 7/8 in",
        "22-7/8\"    | 581.025 | 22 7/8 in",
        "22⅞ in      | 581.025 | 22 7/8 in",
        "22 ⅞″       | 581.025 | 22 7/8 in",
        "22-⅞        | 581.025 | 22 7/8 in",
        "22 - 7/8 in | 581.025 | 22 7/8 in",
        "22 7 / 8 in | 581.025 | 22 7/8 in",
        "22 7⁄8''    | 581.025 | 22 7/8 in",
        "22.875      | 581.025 | 22.875 in",
        "22,875 in   | 581.025 | 22.875 in",
        "22.875 IN.  | 581.025 | 22.875 in",
        "21          | 533.4   | 21 in",
        "21 inches   | 533.4   | 21 in",
        "21 inch     | 533.4   | 21 in",
        "20½         | 520.7   | 20 1/2 in",
        "20 8/16     | 520.7   | 20 8/16 in",
        "58,1 cm     | 581     | 58.1 cm",
        "58.1cm      | 581     | 58.1 cm",
        "58.1        | 581     | 58.1 cm",
        "581 mm      | 581     | 581 mm",
        "581         | 581     | 581 mm",
        "581mm       | 581     | 581 mm",
        "533.4       | 533.4   | 533.4 mm",
        "15          | 381     | 15 in",
        "27          | 685.8   | 27 in",
        "38          | 380     | 38 cm",
        "68          | 680     | 68 cm",
        "380         | 380     | 380 mm",
        "680         | 680     | 680 mm",
      })
  void understood(String text, double mm, String kept) {
    Reading reading = reading(text);
    assertThat(reading.length().value()).isCloseTo(mm, within(1e-9));
    assertThat(reading.entered()).isEqualTo(kept);
  }

  @ParameterizedTest(name = "[{0}]")
  @DisplayName("may have stray blanks anywhere between its parts")
  @ValueSource(
      strings = {
        " 22 7/8",
        "22  7/8 ",
        "\t22 7/8\t\"",
        "22\u00a07/8\u202fin",
        "  22   7 /  8  in "
      })
  void strayBlanks(String text) {
    assertThat(reading(text).entered()).isEqualTo("22 7/8 in");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @DisplayName("is refused with the reason and an example")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      value = {
        "big            | \"big\" is not a reading.",
        "22 7/          | is not a reading.",
        "7/8            | is not a reading.",
        "-22            | is not a reading.",
        "22 1/3         | is not a reading.",
        "22 7/0         | is not a reading.",
        "5810 mm        | is not a reading.",
        "1,022.5        | is not a reading.",
        "22 ft          | is not a reading.",
        "2e2            | is not a reading.",
        "22 9/8         | 9/8 is not a part of an inch.",
        "22 8/8         | 8/8 is not a part of an inch.",
        "22.5 7/8       | either decimals or a fraction",
        "58 1/2 cm      | A fraction goes with inches only.",
        "581 1/2        | Without a unit this could not be a head",
        "30             | Without a unit this could not be a head",
        "14.9           | Without a unit this could not be a head",
        "27.1           | Without a unit this could not be a head",
        "37.9           | Without a unit this could not be a head",
        "68.1           | Without a unit this could not be a head",
        "379            | Without a unit this could not be a head",
        "681            | Without a unit this could not be a head",
        "581 cm         | A head measures 38 to 68 cm.",
        "58.1 mm        | A head measures 380 to 680 mm.",
        "58 in          | A head measures 15 to 27 in.",
        "14 7/8\"       | A head measures 15 to 27 in.",
        "27 1/16 in     | A head measures 15 to 27 in.",
      })
  void refused(String text, String reason) {
    assertThat(reasonFor(text)).contains(reason).endsWith("22 7/8 in, 58.1 cm or 581 mm.");
  }

  @ParameterizedTest
  @NullSource
  @ValueSource(strings = {"", "   ", "\t"})
  @DisplayName("is asked for where there is none")
  void nothingEntered(String text) {
    assertThat(reasonFor(text)).startsWith("Enter what the tape shows.");
  }

  @ParameterizedTest
  @ValueSource(ints = {41, 10_000})
  @DisplayName("is not looked at when it is far too long")
  void tooLong(int length) {
    assertThat(reasonFor("2".repeat(length))).startsWith("That is too long");
  }

  @ParameterizedTest(name = "{0}: {1}")
  @DisplayName("is said back in inches to the nearest sixteenth and in millimetres")
  @CsvSource({
    "581 mm, '22 7/8 in, 581 mm'",
    "21, '21 in, 533 mm'",
    "'58,1 cm', '22 7/8 in, 581 mm'",
    "22.875, '22 7/8 in, 581 mm'",
    "540, '21 1/4 in, 540 mm'",
    "'21 1/32', '21 1/16 in, 534 mm'",
  })
  void saidBack(String text, String said) {
    assertThat(reading(text).saidBack()).isEqualTo(said);
  }

  private static Reading reading(String text) {
    return switch (ReadingText.understand(text)) {
      case Understood.Ok ok -> ok.reading();
      case Understood.Not not -> throw new AssertionError(text + ": " + not.reason());
    };
  }

  private static String reasonFor(String text) {
    return switch (ReadingText.understand(text)) {
      case Understood.Ok ok -> throw new AssertionError(text + " was taken for " + ok.reading());
      case Understood.Not not -> not.reason();
    };
  }
}
