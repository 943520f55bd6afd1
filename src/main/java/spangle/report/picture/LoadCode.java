package spangle.report.picture;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Map;

/** The load number as a QR code (ISO/IEC 18004), readable by any phone. */
public final class LoadCode {
  /** The standard asks for four clear modules around the code. */
  private static final int QUIET = 4;

  private LoadCode() {}

  /** The drawing of a text of at most a few dozen characters. */
  public static String of(String text) {
    ByteMatrix modules = encode(text);
    int size = modules.getWidth() + 2 * QUIET;
    StringBuilder path = new StringBuilder();
    for (int y = 0; y < modules.getHeight(); y++) {
      int x = 0;
      while (x < modules.getWidth()) {
        int from = x;
        while (x < modules.getWidth() && modules.get(x, y) == 1) {
          x++;
        }
        if (x > from) {
          path.append('M').append(from + QUIET).append(' ').append(y + QUIET);
          path.append('h').append(x - from).append("v1h-").append(x - from).append('z');
        }
        x++;
      }
    }
    return new Svg(size, size, "qr", "code of " + text)
        .rect(0, 0, size, size, "paper")
        .path(path.toString(), "ink")
        .done();
  }

  private static ByteMatrix encode(String text) {
    try {
      return Encoder.encode(
              text, ErrorCorrectionLevel.Q, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
          .getMatrix();
    } catch (WriterException e) {
      throw new IllegalArgumentException("load number too long for a code: " + text, e);
    }
  }
}
