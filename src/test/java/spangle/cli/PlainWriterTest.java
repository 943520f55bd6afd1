package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringWriter;
import org.junit.jupiter.api.Test;

class PlainWriterTest {
  @Test
  void whatATerminalWouldObeyIsLeftOut() throws IOException {
    StringWriter to = new StringWriter();
    try (PlainWriter writer = new PlainWriter(to)) {
      writer.write("a\u001b[31mb\u202ec\u2066\u0000\u009bd\r\n\te\u00b5 \ud83d\ude00");
      writer.write(7);
      writer.write('f');
      writer.write(new char[] {'x', '\u007f', 'y', 'z'}, 1, 2);
      writer.write("xyz\u001b", 1, 1);
    }
    assertThat(to).hasToString("a[31mbcd\r\n\te\u00b5 \ud83d\ude00fyy");
  }
}
