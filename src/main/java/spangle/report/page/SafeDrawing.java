package spangle.report.page;

import java.io.IOException;
import java.io.StringReader;
import java.util.Locale;
import java.util.Set;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.ErrorHandler;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;

/**
 * Lets a drawing onto the page only when it is one well-formed svg element of plain shapes: nothing
 * that runs, nothing that reaches outside.
 */
final class SafeDrawing {
  private static final Set<String> ELEMENTS =
      Set.of(
          "svg",
          "g",
          "path",
          "rect",
          "line",
          "circle",
          "ellipse",
          "polygon",
          "polyline",
          "text",
          "tspan",
          "title",
          "desc",
          "defs",
          "pattern",
          "marker",
          "clippath",
          "use",
          "style");

  private SafeDrawing() {}

  /** The drawing itself, or nothing. */
  static String of(String svg) {
    String trimmed = svg.strip();
    if (!trimmed.startsWith("<svg")) {
      return "";
    }
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
      factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
      factory.setXIncludeAware(false);
      factory.setExpandEntityReferences(false);
      var builder = factory.newDocumentBuilder();
      builder.setErrorHandler(new Refusing());
      Document document = builder.parse(new InputSource(new StringReader(trimmed)));
      return harmless(document.getDocumentElement()) ? trimmed : "";
    } catch (SAXException | IOException e) {
      return "";
    } catch (ParserConfigurationException e) {
      throw new IllegalStateException("this Java has no XML parser", e);
    }
  }

  private static boolean harmless(Element element) {
    if (!ELEMENTS.contains(element.getTagName().toLowerCase(Locale.ROOT))) {
      return false;
    }
    for (int i = 0; i < element.getAttributes().getLength(); i++) {
      Node attribute = element.getAttributes().item(i);
      String name = attribute.getNodeName().toLowerCase(Locale.ROOT);
      String value = attribute.getNodeValue().strip().toLowerCase(Locale.ROOT);
      boolean reaches =
          (name.endsWith("href") && !value.startsWith("#"))
              || (value.contains("url(") && !value.contains("url(#"));
      if (name.startsWith("on") || reaches) {
        return false;
      }
    }
    if (element.getTagName().equalsIgnoreCase("style")
        && (element.getTextContent().contains("url(")
            || element.getTextContent().contains("@import"))) {
      return false;
    }
    for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
      if (child instanceof Element inner && !harmless(inner)) {
        return false;
      }
    }
    return true;
  }

  /** Keeps the parser from writing on the screen. */
  private static final class Refusing implements ErrorHandler {
    @Override
    public void warning(SAXParseException e) {
      // a warning does not make a drawing unsafe
    }

    @Override
    public void error(SAXParseException e) throws SAXException {
      throw e;
    }

    @Override
    public void fatalError(SAXParseException e) throws SAXException {
      throw e;
    }
  }
}
