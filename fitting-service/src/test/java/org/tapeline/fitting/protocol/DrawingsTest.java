package org.tapeline.fitting.protocol;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

@DisplayName("A drawing")
class DrawingsTest {
  /** Shown beside a check's own drawing, and with the care of an air liner. */
  private static final Set<String> BESIDES =
      Set.of(
          "upper-straps-under-guard",
          "snaps-closed",
          "care-lubricant",
          "care-short-needle",
          "care-opposite-wall");

  /** Only what draws: whatever could run, fetch, show words or restyle the page is not here. */
  private static final Set<String> ELEMENTS =
      Set.of("svg", "title", "g", "path", "circle", "rect", "clipPath");

  private static final int MOST_BYTES = 12 * 1024;

  @Test
  @DisplayName("is there for each check of the protocol, and none is without a use")
  void oneForEachCheck() throws Exception {
    Set<String> used = new TreeSet<>(BESIDES);
    Protocols.builtIn().checks().forEach(check -> used.add(check.id()));
    assertThat(drawn()).isEqualTo(used);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawn")
  @DisplayName("has a description for those who do not see it, and the common frame")
  void titleAndFrame(String id) throws Exception {
    Element svg = parsed(id).getDocumentElement();
    assertThat(svg.getTagName()).isEqualTo("svg");
    assertThat(svg.getAttribute("viewBox")).isEqualTo("0 0 320 240");
    NodeList titles = svg.getElementsByTagName("title");
    assertThat(titles.getLength()).isOne();
    assertThat(titles.item(0).getTextContent()).hasSizeBetween(15, 120);
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("drawn")
  @DisplayName("carries no words, no script and nothing from elsewhere, and is small")
  void nothingButLines(String id) throws Exception {
    for (Element element : elements(parsed(id))) {
      assertThat(ELEMENTS).contains(element.getTagName());
      for (int i = 0; i < element.getAttributes().getLength(); i++) {
        String name = element.getAttributes().item(i).getNodeName();
        assertThat(name).doesNotContainIgnoringCase("href").doesNotStartWith("on");
        assertThat(name).isNotEqualTo("style");
        assertThat(element.getAttributes().item(i).getNodeValue())
            .doesNotContainPattern("url\\((?!#)");
      }
    }
    assertThat(Files.size(file(id))).isLessThan(MOST_BYTES);
  }

  private static Set<String> drawn() throws Exception {
    try (Stream<Path> files = Files.list(folder())) {
      Set<String> ids = new TreeSet<>();
      files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".svg"))
          .forEach(name -> ids.add(name.substring(0, name.length() - ".svg".length())));
      return ids;
    }
  }

  private static Path folder() throws Exception {
    URI drawings = DrawingsTest.class.getResource("/META-INF/resources/drawings").toURI();
    return Path.of(drawings);
  }

  private static Path file(String id) throws Exception {
    return folder().resolve(id + ".svg");
  }

  /** Refuses a document type, so that no drawing can reach for a file while it is read. */
  private static Document parsed(String id) throws Exception {
    DocumentBuilderFactory parsers = DocumentBuilderFactory.newInstance();
    parsers.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
    parsers.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    return parsers.newDocumentBuilder().parse(file(id).toFile());
  }

  private static List<Element> elements(Document drawing) {
    NodeList all = drawing.getElementsByTagName("*");
    return IntStream.range(0, all.getLength()).mapToObj(i -> (Element) all.item(i)).toList();
  }
}
