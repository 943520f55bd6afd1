package spangle.intake.source;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Bytes into characters: UTF-8 or UTF-16 by their mark, UTF-8 without, else Windows Latin. */
public final class Bytes {
  private static final char MARK = '\uFEFF';

  private Bytes() {}

  /**
   * Decoded text.
   *
   * @param text without byte order mark
   * @param charset how it was read
   * @param guessed true when the bytes were no UTF-8 and carried no mark
   */
  public record Decoded(String text, String charset, boolean guessed) {}

  /** Decodes a file; every sequence of bytes gives some text. */
  public static Decoded decode(byte[] bytes) {
    if (startsWith(bytes, 0xFF, 0xFE)) {
      return new Decoded(plain(bytes, StandardCharsets.UTF_16LE), "UTF-16", false);
    }
    if (startsWith(bytes, 0xFE, 0xFF)) {
      return new Decoded(plain(bytes, StandardCharsets.UTF_16BE), "UTF-16", false);
    }
    try {
      String text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
      return new Decoded(withoutMark(text), "UTF-8", false);
    } catch (CharacterCodingException notUtf8) {
      return new Decoded(plain(bytes, latin()), "Latin-1", true);
    }
  }

  private static Charset latin() {
    return Charset.isSupported("windows-1252")
        ? Charset.forName("windows-1252")
        : StandardCharsets.ISO_8859_1;
  }

  private static String plain(byte[] bytes, Charset charset) {
    return withoutMark(new String(bytes, charset));
  }

  private static String withoutMark(String text) {
    return !text.isEmpty() && text.charAt(0) == MARK ? text.substring(1) : text;
  }

  private static boolean startsWith(byte[] bytes, int first, int second) {
    return bytes.length >= 2 && (bytes[0] & 0xFF) == first && (bytes[1] & 0xFF) == second;
  }
}
