package spangle.intake.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spangle.part.flat.Point;

/**
 * An entity with its group codes.
 *
 * @param type its name
 * @param tags its codes, without the name
 * @param line where it starts
 */
record RawEntity(String type, List<Tag> tags, int line) {
  private static final double WORLD = 1e9;

  /** A number in an entity that is none. */
  static final class BadNumber extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Tag tag;

    BadNumber(Tag tag) {
      super(tag.value());
      this.tag = tag;
    }

    Tag tag() {
      return tag;
    }
  }

  Optional<Tag> tag(int code) {
    for (Tag tag : tags) {
      if (tag.code() == code) {
        return Optional.of(tag);
      }
    }
    return Optional.empty();
  }

  String text(int code, String otherwise) {
    return tag(code).map(Tag::value).orElse(otherwise);
  }

  double number(int code, double otherwise) throws BadNumber {
    Optional<Tag> tag = tag(code);
    return tag.isPresent() ? number(tag.get()) : otherwise;
  }

  int whole(int code, int otherwise) throws BadNumber {
    double number = number(code, otherwise);
    return (int) Math.max(-1e9, Math.min(1e9, number));
  }

  Point point(int code) throws BadNumber {
    return new Point(number(code, 0), number(code + 10, 0));
  }

  double[] numbers(int code) throws BadNumber {
    List<Double> found = new ArrayList<>();
    for (Tag tag : tags) {
      if (tag.code() == code) {
        found.add(number(tag));
      }
    }
    return found.stream().mapToDouble(Double::doubleValue).toArray();
  }

  /** Points whose x comes with this code and whose y follows with the code ten higher. */
  List<Point> points(int code) throws BadNumber {
    List<Point> points = new ArrayList<>();
    double x = 0;
    boolean open = false;
    for (Tag tag : tags) {
      if (tag.code() == code) {
        if (open) {
          points.add(new Point(x, 0));
        }
        x = number(tag);
        open = true;
      } else if (tag.code() == code + 10 && open) {
        points.add(new Point(x, number(tag)));
        open = false;
      }
    }
    return points;
  }

  /** A number, with a decimal comma too; nothing larger than the world of drawings. */
  static double number(Tag tag) throws BadNumber {
    String text = tag.value();
    if (text.length() > 60 || text.isEmpty()) {
      throw new BadNumber(tag);
    }
    for (int i = 0; i < text.length(); i++) {
      // Double.parseDouble also takes hexadecimal and words, which no drawing means.
      if ("0123456789.,+-eE".indexOf(text.charAt(i)) < 0) {
        throw new BadNumber(tag);
      }
    }
    try {
      double number = Double.parseDouble(text.replace(',', '.'));
      if (Math.abs(number) <= WORLD) {
        return number;
      }
    } catch (NumberFormatException none) {
      throw new BadNumber(tag);
    }
    throw new BadNumber(tag);
  }
}
