package spangle.intake.source;

import java.util.ArrayList;
import java.util.List;
import org.xml.sax.Attributes;
import org.xml.sax.SAXException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * The texts the cells of a workbook share, by number. The counts such a table may carry are
 * optional and often wrong; the table itself is asked.
 */
final class SharedTexts extends DefaultHandler {
  private final List<String> texts = new ArrayList<>();
  private final RunText text = new RunText();

  @Override
  public void startElement(String uri, String local, String name, Attributes attributes) {
    if (local.equals("si")) {
      text.clear();
    } else {
      text.start(local, attributes);
    }
  }

  @Override
  public void characters(char[] chars, int start, int length) throws SAXException {
    text.add(chars, start, length);
  }

  @Override
  public void endElement(String uri, String local, String name) throws SAXException {
    if (!local.equals("si")) {
      text.end(local);
    } else if (texts.size() >= Limits.VALUES) {
      throw new SheetHandler.LimitException();
    } else {
      texts.add(text.toString());
    }
  }

  String get(int index) throws SAXException {
    if (index < 0 || index >= texts.size()) {
      throw new SAXException("a shared string is missing");
    }
    return texts.get(index);
  }
}
