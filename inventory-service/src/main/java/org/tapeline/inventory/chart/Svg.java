package org.tapeline.inventory.chart;

import java.awt.Dimension;
import java.io.StringWriter;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.svggen.SVGCSSStyler;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.apache.batik.svggen.SVGIDGenerator;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** What is drawn on it becomes SVG that stands in a page beside others. */
final class Svg {
  /** Where what all parts of a drawing share would stand; no two drawings may have its id. */
  private static final String EMPTY_DEFS = "<defs id=\"genericDefs\"/>";

  private static final String NAMESPACE = "http://www.w3.org/2000/svg";

  private final String key;
  private final Dimension size;
  private final SVGGraphics2D graphics;

  /**
   * @param key before every name in it, so that no two drawings of a page share one
   * @param width in the units of the drawing; the page scales it
   */
  Svg(String key, int width, int height) {
    this.key = key;
    this.size = new Dimension(width, height);
    this.graphics = new SVGGraphics2D(context(key), false);
  }

  /** To draw on. */
  SVGGraphics2D graphics() {
    return graphics;
  }

  /**
   * The drawing so far.
   *
   * @param title for those who do not see it
   * @param pattern what fills the areas that refer to it, as text of SVG
   */
  String text(String title, String pattern) {
    Element root = graphics.getRoot();
    // Only in the attribute style do all browsers take what a page sets by name.
    SVGCSSStyler.style(root);
    root.removeAttribute("width");
    root.removeAttribute("height");
    root.setAttribute("viewBox", "0 0 " + size.width + " " + size.height);
    root.setAttribute("role", "img");
    root.setAttribute("aria-label", title);
    root.setAttribute("class", "chart");
    return written(root).replace(EMPTY_DEFS, "<defs>" + pattern + "</defs>");
  }

  private static SVGGeneratorContext context(String key) {
    SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
    context.setComment(null);
    context.setIDGenerator(
        new SVGIDGenerator() {
          @Override
          public String generateID(String prefix) {
            return key + super.generateID(prefix);
          }
        });
    return context;
  }

  private static Document document() {
    try {
      return DocumentBuilderFactory.newDefaultNSInstance()
          .newDocumentBuilder()
          .getDOMImplementation()
          .createDocument(NAMESPACE, "svg", null);
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("Every Java runtime makes XML", e);
    }
  }

  private static String written(Element root) {
    try {
      Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
      writer.setOutputProperty(OutputKeys.OMIT_XML_DECLARATION, "yes");
      StringWriter text = new StringWriter();
      writer.transform(new DOMSource(root), new StreamResult(text));
      return text.toString();
    } catch (TransformerException e) {
      throw new IllegalStateException("A drawing that cannot be written", e);
    }
  }
}
