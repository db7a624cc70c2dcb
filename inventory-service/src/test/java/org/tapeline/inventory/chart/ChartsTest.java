package org.tapeline.inventory.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.StringReader;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

@DisplayName("A chart")
class ChartsTest {
  private static final BandedBars BARS =
      new BandedBars(
          "Helmets that the season needs",
          "Youth medium is short by 7.",
          "helmets",
          "expected",
          "5 to 95 %",
          "usable now",
          List.of(
              new BandedBars.Bar("Youth small", 12.4, 8, 17, OptionalDouble.of(20)),
              new BandedBars.Bar("Youth <medium>", 61, 55, 66, OptionalDouble.of(48)),
              new BandedBars.Bar("Youth extra large", 3, 1, 6, OptionalDouble.empty())));

  private static final BandedLines LINES =
      new BandedLines(
          "Helmets to buy",
          "Most in 2029.",
          "helmets",
          "Year",
          "5 to 95 %",
          List.of(
              new BandedLines.Line(
                  "Model A",
                  List.of(
                      new BandedLines.Point(2027, 40, 30, 55),
                      new BandedLines.Point(2028, 60, 45, 80))),
              new BandedLines.Line("Model B", List.of(new BandedLines.Point(2027, 4, 0, 9)))));

  private static final StockLevel LEVEL =
      new StockLevel(
          "Jaw pads at the depot",
          "Below the reorder point since August 9.",
          "pieces",
          OptionalDouble.of(20),
          List.of(
              new StockLevel.Level(LocalDate.of(2026, 8, 1), 44),
              new StockLevel.Level(LocalDate.of(2026, 8, 9), 18),
              new StockLevel.Level(LocalDate.of(2026, 8, 20), -2)));

  private static final StackedBars STACK =
      new StackedBars(
          "Helmets by year",
          "Most of 2025.",
          "helmets",
          "Made in",
          Map.of("2025", Map.of("Youth small", 4.0, "Youth <medium>", 7.5)));

  @Test
  @DisplayName("is well-formed SVG for desk and phone, whatever the labels hold")
  void wellFormed() throws Exception {
    for (Picture p :
        List.of(Charts.of(BARS), Charts.of(LINES), Charts.of(LEVEL), Charts.of(STACK))) {
      for (String svg : List.of(p.desk(), p.phone())) {
        var root =
            DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(svg)))
                .getDocumentElement();
        assertThat(root.getAttribute("role")).isEqualTo("img");
        assertThat(root.getAttribute("aria-label")).isEqualTo(p.title());
        assertThat(root.getAttribute("viewBox")).isNotEmpty();
      }
    }
  }

  @Test
  @DisplayName("shares no name of a part with another drawing of the page")
  void names() {
    List<String> ids =
        Stream.of(Charts.of(BARS), Charts.of(LINES), Charts.of(LEVEL), Charts.of(STACK))
            .flatMap(p -> Stream.of(p.desk(), p.phone()))
            .flatMap(svg -> Pattern.compile(" id=['\"]([^'\"]+)").matcher(svg).results())
            .map(id -> id.group(1))
            .toList();
    assertThat(ids).isNotEmpty().doesNotHaveDuplicates();
  }

  @Test
  @DisplayName("takes all its colours from the page, so that they follow scheme and print")
  void coloursOfThePage() {
    for (Picture p :
        List.of(Charts.of(BARS), Charts.of(LINES), Charts.of(LEVEL), Charts.of(STACK))) {
      assertThat(p.desk() + p.phone()).doesNotContain("rgb(").contains("var(--ink");
    }
  }

  @Test
  @DisplayName("tells its parts apart without colour: hatching, dashes and marks")
  void withoutColour() {
    assertThat(Charts.of(BARS).desk()).contains("hatch)").containsOnlyOnce("<pattern");
    assertThat(Charts.of(LINES).desk()).contains("stroke-dasharray:8,4");
    assertThat(Charts.of(LEVEL).desk()).contains("stroke-dasharray:7,5");
  }

  @Test
  @DisplayName("has its numbers as a table")
  void numbers() {
    Picture bars = Charts.of(BARS);
    assertThat(bars.columns())
        .containsExactly("", "expected", "5 to 95 %, from", "to", "usable now");
    assertThat(bars.rows().get(0)).containsExactly("Youth small", "12.4", "8", "17", "20");
    assertThat(bars.rows().get(2)).containsExactly("Youth extra large", "3", "1", "6", "");
    assertThat(Charts.of(LEVEL).rows().get(2)).containsExactly("2026-08-20", "-2");
    assertThat(Charts.of(LINES).rows()).hasSize(3);
  }

  @Test
  @DisplayName("is refused when a value lies outside its band, or there is nothing to draw")
  void refused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new BandedBars.Bar("x", 5, 6, 9, OptionalDouble.empty()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new BandedLines.Point(2027, Double.NaN, 0, 1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new StockLevel("t", "s", "u", OptionalDouble.empty(), List.of()));
  }

  @Test
  @DisplayName("of many parts tells four apart, and says all of them in its numbers")
  void manyParts() {
    Map<String, Double> parts = new LinkedHashMap<>();
    List.of("A", "B", "C", "D", "E").forEach(part -> parts.put(part, 1.0));
    StackedBars chart = new StackedBars("Many", "Five.", "helmets", "Year", Map.of("1", parts));
    assertThat(chart.drawn()).containsExactly("A", "B", "C", "others");
    assertThat(chart.height("1", "others")).isEqualTo(2);
    assertThat(Charts.of(chart).rows()).containsExactly(List.of("1", "1", "1", "1", "1", "1", "5"));
  }
}
