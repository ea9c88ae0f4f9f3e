package wherefrom.ui.controls;

import java.util.List;
import java.util.StringTokenizer;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Circle;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.CubicCurveTo;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;

/** The signs on the keys of the rail, in lines of one width. */
public enum Icon {
  BACK("M 40 22 L 6 22 M 20 8 L 6 22 L 20 36"),
  BENCH(
      "M 2 16 L 42 16 M 7 16 L 7 40 M 37 16 L 37 40 M 7 30 L 37 30 M 12 16 L 12 6 L 22 6 L 22 16"
          + " M 28 16 L 28 10 L 35 10 L 35 16"),
  CAMERA(
      "M 4 13 L 13 13 L 17 7 L 27 7 L 31 13 L 40 13 L 40 37 L 4 37 Z",
      List.of(Dot.ring(22, 24, 7))),
  HELP("M 13 14 C 13 0 33 0 33 13 C 33 22 22 21 22 30", List.of(Dot.solid(22, 39, 3))),
  UNDO("M 16 6 L 5 16 L 16 26 M 5 16 L 28 16 C 42 16 42 37 28 37 L 14 37"),
  JOBS("M 14 6 L 40 6 L 40 30 L 14 30 L 9 25 L 9 11 Z M 4 16 L 4 38 L 32 38"),
  MORE(
      "M 4 11 L 40 11 M 4 22 L 40 22 M 4 33 L 40 33",
      List.of(Dot.open(14, 11, 4.6), Dot.open(30, 22, 4.6), Dot.open(18, 33, 4.6))),
  MENU("M 4 9 L 40 9 M 4 22 L 40 22 M 4 35 L 40 35"),
  ENGINE(
      "M 2 8 L 34 8 L 34 36 L 2 36 Z M 41 11 L 41 33",
      List.of(
          Dot.solid(7, 15, 2.9),
          Dot.solid(14.3, 15, 2.9),
          Dot.solid(21.6, 15, 2.9),
          Dot.solid(28.9, 15, 2.9),
          Dot.solid(7, 29, 2.9),
          Dot.solid(14.3, 29, 2.9),
          Dot.solid(21.6, 29, 2.9),
          Dot.solid(28.9, 29, 2.9))),
  TURN("M 6 15 L 36 15 M 28 7 L 37 15 L 28 23 M 38 31 L 8 31 M 16 23 L 7 31 L 16 39"),
  SPACE("M 5 20 L 5 30 L 39 30 L 39 20"),
  CHOSEN("M 5 5 L 39 5 L 39 39 L 5 39 Z M 13 22 L 20 30 L 32 13"),
  STOP_WORK("M 9 9 L 35 9 L 35 35 L 9 35 Z"),
  HOME("M 4 22 L 22 6 L 40 22 M 9 18 L 9 39 L 35 39 L 35 18 M 18 39 L 18 27 L 26 27 L 26 39");

  /** The box that the paths are drawn in. */
  private static final double BOX = 44;

  private static final double LINE = 4.4;

  /** A round piece of a sign: full, a ring, or a ring that hides the line below it. */
  private record Dot(double x, double y, double radius, String styleClass) {
    static Dot solid(double x, double y, double radius) {
      return new Dot(x, y, radius, "icon-solid");
    }

    static Dot ring(double x, double y, double radius) {
      return new Dot(x, y, radius, "icon-line");
    }

    static Dot open(double x, double y, double radius) {
      return new Dot(x, y, radius, "icon-open");
    }
  }

  private final String path;

  @SuppressWarnings("ImmutableEnumChecker") // an unmodifiable list of records
  private final List<Dot> dots;

  Icon(String path) {
    this(path, List.of());
  }

  Icon(String path, List<Dot> dots) {
    this.path = path;
    this.dots = List.copyOf(dots);
  }

  /** Draws it in a square of so many pixels. */
  public Pane draw(double side) {
    double scale = side / BOX;
    Pane drawn = new Pane(line(scale));
    for (Dot dot : dots) {
      Circle circle = new Circle(dot.x * scale, dot.y * scale, dot.radius * scale);
      circle.getStyleClass().add(dot.styleClass);
      circle.setStrokeWidth(LINE * scale);
      drawn.getChildren().add(circle);
    }
    // The square is the same for all, so that signs stand level.
    drawn.setMinSize(side, side);
    drawn.setMaxSize(side, side);
    drawn.resize(side, side);
    drawn.setMouseTransparent(true);
    return drawn;
  }

  private Path line(double scale) {
    Path line = new Path();
    StringTokenizer words = new StringTokenizer(path);
    while (words.hasMoreTokens()) {
      line.getElements().add(element(words, scale));
    }
    line.getStyleClass().add("icon-line");
    line.setStrokeWidth(LINE * scale);
    line.setStrokeLineCap(StrokeLineCap.ROUND);
    line.setStrokeLineJoin(StrokeLineJoin.ROUND);
    return line;
  }

  private static PathElement element(StringTokenizer words, double scale) {
    String letter = words.nextToken();
    return switch (letter) {
      case "M" -> new MoveTo(next(words, scale), next(words, scale));
      case "L" -> new LineTo(next(words, scale), next(words, scale));
      case "C" ->
          new CubicCurveTo(
              next(words, scale),
              next(words, scale),
              next(words, scale),
              next(words, scale),
              next(words, scale),
              next(words, scale));
      case "Z" -> new ClosePath();
      default -> throw new IllegalArgumentException("no path: " + letter);
    };
  }

  private static double next(StringTokenizer words, double scale) {
    return scale * Double.parseDouble(words.nextToken());
  }
}
