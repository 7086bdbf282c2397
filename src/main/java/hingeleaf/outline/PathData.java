package hingeleaf.outline;

import hingeleaf.geom.Vec2;

/** Path data as SVG 1.1, section 8.3, has it: {@code M10,10 l5-5 a1 1 0 01.5.5 z}. */
final class PathData {
  private final Numbers in;
  private final Pen pen;
  private Vec2 handle = Vec2.ZERO;
  private char last = 'M';

  PathData(String text, Pen pen) {
    this.in = new Numbers(text);
    this.pen = pen;
  }

  /** Draws all of it. */
  void draw() throws Refusal {
    in.spaces();
    boolean first = true;
    while (!in.done()) {
      char command = in.peek();
      if ("MmLlHhVvCcSsQqTtAaZz".indexOf(command) < 0) {
        throw in.wrong("a path command");
      }
      if (first && command != 'M' && command != 'm') {
        throw in.wrong("`M` at the beginning of a path");
      }
      in.take();
      command(command);
      first = false;
      in.spaces();
    }
  }

  private void command(char command) throws Refusal {
    if (command == 'Z' || command == 'z') {
      pen.close();
      last = 'Z';
      return;
    }
    char next = command;
    do {
      once(next);
      next = next == 'M' ? 'L' : next == 'm' ? 'l' : next;
      in.spaces();
      if (in.peek() == ',') {
        in.separator();
        if (!in.numberAhead()) {
          throw in.wrong("a number");
        }
      }
    } while (in.numberAhead());
  }

  private void once(char command) throws Refusal {
    boolean relative = Character.isLowerCase(command);
    char upper = Character.toUpperCase(command);
    switch (upper) {
      case 'M' -> pen.move(point(relative));
      case 'L' -> pen.line(point(relative));
      case 'H' -> pen.line(new Vec2(in.number() + (relative ? pen.at().x() : 0), pen.at().y()));
      case 'V' -> pen.line(new Vec2(pen.at().x(), in.number() + (relative ? pen.at().y() : 0)));
      case 'C' -> cubic(point(relative), relative);
      case 'S' -> cubic(mirrored("CS"), relative);
      case 'Q' -> quadratic(point(relative), relative);
      case 'T' -> quadratic(mirrored("QT"), relative);
      default -> arc(relative);
    }
    last = upper;
  }

  private Vec2 point(boolean relative) throws Refusal {
    Vec2 p = new Vec2(in.number(), in.number());
    return relative ? p.plus(pen.at()) : p;
  }

  /** The last handle mirrored in the current point, if the last command was of the same family. */
  private Vec2 mirrored(String family) {
    return family.indexOf(last) >= 0 ? pen.at().times(2).minus(handle) : pen.at();
  }

  private void cubic(Vec2 first, boolean relative) throws Refusal {
    Vec2 second = point(relative);
    Vec2 to = point(relative);
    pen.cubic(first, second, to);
    handle = second;
  }

  private void quadratic(Vec2 only, boolean relative) throws Refusal {
    pen.quadratic(only, point(relative));
    handle = only;
  }

  private void arc(boolean relative) throws Refusal {
    double rx = in.number();
    double ry = in.number();
    double degrees = in.number();
    boolean large = in.flag();
    boolean sweep = in.flag();
    pen.arc(rx, ry, degrees, large, sweep, point(relative));
  }
}
