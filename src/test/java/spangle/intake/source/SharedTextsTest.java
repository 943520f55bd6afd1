package spangle.intake.source;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringReader;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.poi.util.XMLHelper;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;
import org.xml.sax.XMLReader;

/** Texts a workbook shares, as ECMA-376 Part 1, 18.4 describes them. */
class SharedTextsTest {
  private static SharedTexts read(String items)
      throws IOException, SAXException, ParserConfigurationException {
    SharedTexts texts = new SharedTexts();
    XMLReader parser = XMLHelper.newXMLReader();
    parser.setContentHandler(texts);
    parser.parse(
        new InputSource(
            new StringReader(
                "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">"
                    + items
                    + "</sst>")));
    return texts;
  }

  @Test
  void runsAreOneTextAndWhatIsStruckOutIsMarked() throws Exception {
    SharedTexts texts =
        read(
            "<si><t>plain</t></si>"
                + "<si><r><rPr><b/></rPr><t>plate </t></r><r><t>160x120 mm</t></r></si>"
                + "<si><r><rPr><strike/></rPr><t>10</t></r><r><t>12</t></r></si>"
                + "<si><r><rPr><strike val=\"true\"/></rPr><t>a</t></r></si>"
                + "<si><r><rPr><strike val=\"1\"/></rPr><t>a</t></r></si>"
                + "<si><r><rPr><strike val=\"0\"/></rPr><t>a</t></r></si>"
                + "<si><t>kana</t><rPh sb=\"0\" eb=\"1\"><t>how it sounds</t></rPh></si>"
                + "<si/>");

    assertThat(texts.get(0)).isEqualTo("plain");
    assertThat(texts.get(1)).isEqualTo("plate 160x120 mm");
    assertThat(texts.get(2)).isEqualTo("~10~12");
    assertThat(texts.get(3)).isEqualTo("~a~");
    assertThat(texts.get(4)).isEqualTo("~a~");
    assertThat(texts.get(5)).isEqualTo("a");
    assertThat(texts.get(6)).isEqualTo("kana");
    assertThat(texts.get(7)).isEmpty();
    assertThatThrownBy(() -> texts.get(8)).isInstanceOf(SAXException.class);
    assertThatThrownBy(() -> texts.get(-1)).isInstanceOf(SAXException.class);
  }

  @Test
  void aTextBeyondTheLimitStops() {
    String long20k = "x".repeat(Limits.VALUE_CHARS + 1);
    assertThatThrownBy(() -> read("<si><t>" + long20k + "</t></si>"))
        .isInstanceOf(SheetHandler.LimitException.class);
  }

  @Test
  void entitiesAreNotFollowed() {
    String bomb = "<!DOCTYPE s [<!ENTITY a \"aaaa\"><!ENTITY b SYSTEM \"file:///etc/hostname\">]>";
    SharedTexts texts = new SharedTexts();
    assertThatThrownBy(
            () -> {
              XMLReader parser = XMLHelper.newXMLReader();
              parser.setContentHandler(texts);
              parser.parse(
                  new InputSource(new StringReader(bomb + "<sst><si><t>&b;</t></si></sst>")));
            })
        .isInstanceOf(SAXException.class);
  }
}
