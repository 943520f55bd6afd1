package spangle.report;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The page as a tree: it is HTML that is also well-formed XML. */
final class PageText {
  private PageText() {}

  static Document read(String html) {
    try {
      DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
      factory.setFeature("http://apache.org/xml/features/nonvalidating/load-external-dtd", false);
      return factory.newDocumentBuilder().parse(new InputSource(new StringReader(html)));
    } catch (ParserConfigurationException | org.xml.sax.SAXException | IOException no) {
      throw new AssertionError("the page is not well-formed", no);
    }
  }

  static List<Element> all(Document page, String tag) {
    return list(page.getElementsByTagName(tag));
  }

  static List<Element> in(Element element, String tag) {
    return list(element.getElementsByTagName(tag));
  }

  /** Elements with that word in their class. */
  static List<Element> ofClass(Element element, String word) {
    return in(element, "*").stream()
        .filter(e -> List.of(e.getAttribute("class").split(" ")).contains(word))
        .toList();
  }

  static Element section(Document page, String id) {
    return all(page, "section").stream()
        .filter(s -> s.getAttribute("id").equals(id))
        .findFirst()
        .orElseThrow(() -> new AssertionError("no section " + id));
  }

  private static List<Element> list(NodeList nodes) {
    List<Element> elements = new ArrayList<>();
    for (int i = 0; i < nodes.getLength(); i++) {
      elements.add((Element) nodes.item(i));
    }
    return elements;
  }
}
