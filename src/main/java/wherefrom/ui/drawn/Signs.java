package wherefrom.ui.drawn;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.scene.layout.Region;
import javafx.scene.shape.SVGPath;
import javafx.scene.transform.Scale;

/** The small drawn signs that stand before the names of the areas of a job. */
public enum Signs {
  LOOK("M 3 22 C 12 6 32 6 41 22 C 32 38 12 38 3 22 Z " + ring(22, 22, 6)),
  MEASURE(
      "M 3 8 L 42 8 L 42 18 L 29 18 L 29 38 L 22 30 L 22 18 L 10 18 L 10 30 L 3 38 Z"
          + " M 34 8 L 34 12 M 16 8 L 16 12"),
  PLAN("M 12 30 C 4 14 18 2 30 10 L 38 22 C 42 30 34 42 24 38 Z " + ring(20, 22, 5)),
  DECIDE("M 22 42 L 22 28 L 6 12 M 22 28 L 38 12 M 6 24 L 6 12 L 18 12 M 26 12 L 38 12 L 38 24"),
  AWAY(
      "M 3 20 L 22 4 L 41 20 M 8 17 L 8 41 L 36 41 L 36 17"
          + " M 15 41 L 15 27 L 19 27 L 19 34 L 25 34 L 25 27 L 29 27 L 29 41"),
  MONEY(
      "M 6 12 A 16 6 0 1 0 38 12 A 16 6 0 1 0 6 12 M 6 12 L 6 32 A 16 6 0 0 0 38 32 L 38 12"
          + " M 6 22 A 16 6 0 0 0 38 22"),
  NUMBERS("M 4 40 L 4 4 M 4 40 L 42 40 M 10 34 L 20 24 L 28 28 L 40 10"),
  TORQUE(bolts()),
  TIMING(ring(22, 22, 18) + degrees() + ring(22, 22, 3)),
  RECORD(
      "M 8 4 L 36 4 L 36 40 L 8 40 Z M 15 4 L 15 40 M 21 14 L 31 14 M 21 22 L 31 22 M 21 30 L 28"
          + " 30"),
  TAGS(
      "M 14 9 L 40 9 L 40 35 L 14 35 L 5 28 L 5 16 Z "
          + ring(13, 22, 2)
          + " M 22 17 L 33 17 M 22 27 L 33 27"),
  COPY("M 14 4 L 30 4 L 30 14 L 14 14 Z M 10 14 L 34 14 L 34 40 L 10 40 Z"),
  SETTINGS(
      "M 4 11 L 9 11 M 19 11 L 40 11 M 4 22 L 25 22 M 35 22 L 40 22 M 4 33 L 13 33 M 23 33 L 40 33 "
          + ring(14, 11, 5)
          + ring(30, 22, 5)
          + ring(18, 33, 5)),
  EXPORT("M 4 28 L 4 40 L 40 40 L 40 28 M 22 32 L 22 5 M 11 16 L 22 5 L 33 16"),
  PHOTOS("M 4 8 L 40 8 L 40 36 L 4 36 Z M 4 31 L 16 20 L 25 29 L 31 24 L 40 32 " + ring(31, 16, 3));

  /** The box that the paths are drawn in, and the width of their lines in it. */
  private static final double BOX = 44;

  private static final double LINE = 4.2;

  private final String path;

  Signs(String path) {
    this.path = path;
  }

  private static String ring(double x, double y, double radius) {
    return String.join(
        " ",
        List.of(
            " M " + (x - radius) + " " + y,
            "a " + radius + " " + radius + " 0 1 0 " + 2 * radius + " 0",
            "a " + radius + " " + radius + " 0 1 0 " + -2 * radius + " 0"));
  }

  private static String bolts() {
    return Stream.concat(
            Stream.of(ring(22, 22, 2)),
            IntStream.range(0, 6)
                .mapToDouble(at -> at * Math.PI / 3)
                .mapToObj(turn -> ring(22 + 15 * Math.cos(turn), 22 + 15 * Math.sin(turn), 4)))
        .reduce("", String::concat);
  }

  private static String degrees() {
    return IntStream.range(0, 8)
        .mapToDouble(at -> at * Math.PI / 4)
        .mapToObj(
            turn ->
                " M "
                    + (22 + 12 * Math.cos(turn))
                    + " "
                    + (22 + 12 * Math.sin(turn))
                    + " L "
                    + (22 + 18 * Math.cos(turn))
                    + " "
                    + (22 + 18 * Math.sin(turn)))
        .reduce("", String::concat);
  }

  /** The sign in a square; it takes no touch. */
  public Region of(double side) {
    SVGPath drawn = new SVGPath();
    drawn.setContent(path);
    drawn.setStrokeWidth(LINE);
    drawn.getStyleClass().add("sign");
    drawn.getTransforms().setAll(new Scale(side / BOX, side / BOX));
    drawn.setManaged(false);
    Region box = new Held(drawn);
    box.setMinSize(side, side);
    box.setPrefSize(side, side);
    box.setMaxSize(side, side);
    box.setMouseTransparent(true);
    return box;
  }

  /** A path where it was drawn. */
  private static final class Held extends Region {
    private Held(SVGPath drawn) {
      getChildren().setAll(drawn);
    }
  }
}
