package wherefrom.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wherefrom.engine.Layout;
import wherefrom.engine.LifterType;
import wherefrom.engine.RockerMount;
import wherefrom.parts.PartKind;

/**
 * Every shape lies where the first drawings had it, which were made by another program in another
 * language. {@code shapes.txt} holds for each its role, its box, found from points along its
 * curves, and the ends of its pieces.
 */
class GoldenShapesTest {
  private static final double CLOSE = 0.02;
  private static final Glass GLASS = Glass.screen(Glass.UNITS_PER_MM, 1);
  private static final Map<String, List<String>> GOLDEN = read();

  private static Map<String, List<String>> read() {
    Map<String, List<String>> drawings = new LinkedHashMap<>();
    try (InputStream in = GoldenShapesTest.class.getResourceAsStream("/drawing/shapes.txt")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      List<String> lines = new ArrayList<>();
      for (String line : text.lines().toList()) {
        if (line.startsWith("# ")) {
          lines = new ArrayList<>();
          drawings.put(line.substring(2), lines);
        } else {
          lines.add(line);
        }
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
    return drawings;
  }

  private static Layout layout(String name) {
    Layout v8 = SampleLayouts.ready("v8-odd-even");
    return switch (name) {
      case "inline-6-shaft" ->
          SampleLayouts.with(SampleLayouts.ready("inline-6"), LifterType.FLAT, RockerMount.SHAFT);
      case "opposed-4" -> SampleLayouts.ready(name);
      case "zoom-shaft-roller" -> SampleLayouts.with(v8, LifterType.ROLLER, RockerMount.SHAFT);
      default -> v8;
    };
  }

  private static Drawing drawing(String name) {
    Layout layout = layout(name.split(" ")[0]);
    Asked most = Asked.of(EnumSet.of(PartKind.ROD_CAP, PartKind.MAIN_CAP));
    if (name.startsWith("zoom")) {
      return CylinderZoom.of(
          layout,
          3,
          new Bounds(188, 88, 1068, 680),
          most,
          GLASS,
          EnumSet.allOf(Column.class),
          false);
    }
    double high = name.startsWith("inline") ? 346 : 626;
    View view = name.endsWith("above") ? View.ABOVE : View.BELOW;
    Bounds room = new Bounds(24, 74, 1232, high);
    EngineGeometry at = EngineGeometry.of(layout, view, room, GLASS, BelowPanRail.NAMES);
    return view == View.ABOVE ? EngineAbove.of(at, most) : EngineBelow.of(at, most);
  }

  private static Stream<Shape> shapes(Drawing drawing, boolean words) {
    return Stream.of(
            drawing.ground().stream(),
            drawing.parts().stream().flatMap(figure -> figure.shapes().stream()),
            words ? drawing.words().stream() : Stream.<Shape>empty())
        .flatMap(shapes -> shapes);
  }

  /** A shape as its line of the file. */
  private static String line(Shape shape) {
    if (shape instanceof Shape.Disc disc) {
      return text("DISC " + disc.role(), disc.x(), disc.y(), disc.radius());
    }
    Bounds box = shape.bounds();
    if (shape instanceof Shape.Slab slab) {
      String begin = "SLAB " + slab.role();
      return text(begin, box.x(), box.y(), box.width(), box.height(), slab.radius());
    }
    if (shape instanceof Shape.Words words) {
      String begin = "WORDS " + words.role();
      return text(begin, words.x(), words.y(), words.size()) + " " + words.text();
    }
    Shape.Outline outline = (Shape.Outline) shape;
    String begin = text("OUTLINE " + outline.role(), box.x(), box.y(), box.width(), box.height());
    double[] ends = outline.steps().stream().flatMapToDouble(GoldenShapesTest::end).toArray();
    return text(begin + " |", ends);
  }

  private static DoubleStream end(PathStep step) {
    if (step instanceof PathStep.Move move) {
      return DoubleStream.of(move.x(), move.y());
    }
    if (step instanceof PathStep.Line line) {
      return DoubleStream.of(line.x(), line.y());
    }
    return step instanceof PathStep.Curve curve
        ? DoubleStream.of(curve.x(), curve.y())
        : DoubleStream.empty();
  }

  private static String text(String begin, double... numbers) {
    StringBuilder text = new StringBuilder(begin);
    for (double number : numbers) {
      text.append(String.format(Locale.ROOT, " %.3f", number));
    }
    return text.toString();
  }

  /**
   * Whether two lines say the same; a quarter circle between the ends of an arc may stand in one.
   */
  private static boolean isSame(String golden, String drawn) {
    String[] one = golden.split(" \\| ", 2);
    String[] two = drawn.split(" \\| ", 2);
    if (!sameNumbers(one[0].split(" "), two[0].split(" "))) {
      return false;
    }
    return one.length == 1 || holdsAll(numbers(two[1]), numbers(one[1]));
  }

  private static boolean sameNumbers(String[] one, String[] two) {
    if (one.length != two.length) {
      return false;
    }
    for (int at = 0; at < one.length; at++) {
      boolean named = at < 2 || (at == 5 && one[0].equals("WORDS"));
      boolean same = named ? one[at].equals(two[at]) : isClose(one[at], two[at]);
      if (!same) {
        return false;
      }
    }
    return true;
  }

  private static boolean isClose(String one, String two) {
    return Math.abs(Double.parseDouble(one) - Double.parseDouble(two)) < CLOSE;
  }

  private static double[] numbers(String text) {
    return Stream.of(text.trim().split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  /** Whether the points of one list stand in the other in their order. */
  private static boolean holdsAll(double[] all, double[] wanted) {
    int found = 0;
    for (int at = 0; at < all.length && found < wanted.length; at += 2) {
      boolean same =
          Math.abs(all[at] - wanted[found]) < CLOSE
              && Math.abs(all[at + 1] - wanted[found + 1]) < CLOSE;
      found += same ? 2 : 0;
    }
    return found == wanted.length;
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "v8 above",
        "v8 below",
        "inline-6-shaft above",
        "inline-6-shaft below",
        "opposed-4 above",
        "zoom-stud-flat",
        "zoom-shaft-roller"
      })
  void everyShapeLiesWhereItLay(String name) {
    List<String> golden = new ArrayList<>(GOLDEN.getOrDefault(name, List.of()));
    assertThat(golden).hasSizeGreaterThan(50);
    List<String> surplus = new ArrayList<>();
    for (Shape shape : shapes(drawing(name), !name.startsWith("zoom")).toList()) {
      String line = line(shape);
      golden.stream()
          .filter(other -> isSame(other, line))
          .findFirst()
          .ifPresentOrElse(golden::remove, () -> surplus.add(line));
    }
    assertThat(surplus).as("drawn anew").isEmpty();
    assertThat(golden).as("drawn no more").isEmpty();
  }
}
