package spangle.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Asks the program a question of the phone call, as it is typed: words, and 'words in quotes'. */
record Calc(int code, String out, String err) {
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)");

  static Calc ask(String line) {
    List<String> words = new ArrayList<>();
    words.add("calc");
    Matcher matcher = WORD.matcher(line);
    while (matcher.find()) {
      words.add(matcher.group(1) == null ? matcher.group(2) : matcher.group(1));
    }
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Spangle.run(new PrintWriter(out), new PrintWriter(err), words.toArray(String[]::new));
    return new Calc(code, out.toString(), err.toString());
  }

  static JsonNode json(String line) throws IOException {
    Calc said = ask(line + " --json");
    assertThat(said.code()).as(line + ": " + said.err()).isEqualTo(ExitCode.DONE);
    return new ObjectMapper().readTree(said.out());
  }

  /** Within half a per cent: what is printed is rounded. */
  static void near(JsonNode node, double expected) {
    assertThat(node.asDouble()).isCloseTo(expected, within(Math.abs(expected) * 0.005));
  }

  /** Wrong usage: one sentence, exit 2, nothing on standard output. */
  static String refusal(String line) {
    Calc said = ask(line);
    assertThat(said.code()).as(line).isEqualTo(ExitCode.USAGE);
    assertThat(said.out()).as(line).isEmpty();
    assertThat(said.err().strip().lines()).as(line).hasSize(1);
    assertThat(said.err()).as(line).doesNotContain("Exception", "\tat ");
    return said.err();
  }
}
