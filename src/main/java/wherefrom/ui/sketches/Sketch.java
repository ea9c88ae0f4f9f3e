package wherefrom.ui.sketches;

import java.util.ArrayList;
import java.util.List;

/**
 * A plain drawing of a part or a feature in a field of 120 by 60, with the spots to look at.
 *
 * @param of the key of the kind or the feature
 * @param strokes outlines in the path language of SVG, later ones over earlier ones
 */
record Sketch(String of, List<Stroke> strokes, List<Mark> marks) {

  /** How an outline is drawn. */
  enum Ink {
    /** A body with an outline. */
    BODY,
    /** A hole or a hollow. */
    HOLLOW,
    /** A line that helps, such as a plate below. */
    LINE
  }

  /** An outline. */
  record Stroke(String path, Ink ink) {}

  /**
   * A spot to look at.
   *
   * @param check the key of the quick test
   * @param words a word or two for it
   */
  record Mark(String check, double x, double y, double radius, String words) {}

  Sketch {
    strokes = List.copyOf(strokes);
    marks = List.copyOf(marks);
  }

  static Sketch of(String what) {
    return new Sketch(what, List.of(), List.of());
  }

  private Sketch with(String path, Ink ink) {
    List<Stroke> more = new ArrayList<>(strokes);
    more.add(new Stroke(path, ink));
    return new Sketch(of, more, marks);
  }

  Sketch body(String path) {
    return with(path, Ink.BODY);
  }

  Sketch hollow(String path) {
    return with(path, Ink.HOLLOW);
  }

  Sketch line(String path) {
    return with(path, Ink.LINE);
  }

  Sketch look(String check, double x, double y, double radius, String words) {
    List<Mark> more = new ArrayList<>(marks);
    more.add(new Mark(check, x, y, radius, words));
    return new Sketch(of, strokes, more);
  }

  /** A circle as a path. */
  static String disc(double x, double y, double radius) {
    return "M" + (x - radius) + " " + y + arc(radius, 2 * radius) + arc(radius, -2 * radius) + "Z";
  }

  private static String arc(double radius, double across) {
    return "a" + radius + " " + radius + " 0 1 1 " + across + " 0";
  }

  /** A box as a path. */
  static String box(double x, double y, double width, double height) {
    return "M" + x + " " + y + "h" + width + "v" + height + "h" + -width + "Z";
  }
}
