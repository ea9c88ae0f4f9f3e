package wherefrom.ui.audit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Control;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.shape.Line;
import javafx.scene.shape.Path;
import javafx.scene.shape.Polyline;
import javafx.scene.shape.Shape;
import javafx.scene.text.Text;
import wherefrom.ui.audit.Fault.Rule;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/**
 * Looks over a window that is laid out. Sizes: gloved fingers need 19 mm (MIL-STD-1472E
 * 5.4.3.1.3.3), here 18 at least and 22 for what matters most; text of 4.5 mm capitals is 22
 * minutes of arc at 0.7 m (ISO 9241-3 prefers 20 to 22); contrast 7 to 1 for text, 4.5 to 1 for
 * large text (WCAG 2.2, 1.4.6), 3 to 1 for outlines (1.4.11).
 */
public final class Audit {
  private static final double LEAST_MM = 18;
  private static final double LEAST_PRIMARY_MM = 22;
  private static final double GAP_MM = 4;
  private static final double DISCARD_GAP_MM = 13;
  private static final double TEXT_MM = 4.5;
  private static final double DISPLAY_MM = 10;
  private static final double CAPITAL = 0.75;

  /** From the ends of letters to a key above or below them. */
  private static final double AIR_MM = 1;

  private static final double SLACK_PX = 1.5;
  private static final double EDGE_PX = 0.02;

  /** A zone on a drawing: what is drawn there is its outline. */
  private static final String ON_A_DRAWING = "drawn-zone";

  private static final Set<String> AS_LARGE_AS_ITS_ROOM = Set.of("pad", "in-figure", "message");

  /** The lines that a sign is told by. */
  private static final Set<String> SIGNS = Set.of("icon-line", "debris-line");

  private static final Set<String> IN_A_DRAWING =
      Set.of("drawn-number", "drawn-letter", "drawn-letter-on-ink", "drawn-letter-on-paper");

  private final Scene scene;
  private final Scale scale;
  private final Painted painted;
  private final List<Fault> faults = new ArrayList<>();

  private Audit(Scene scene, Scale scale) {
    this.scene = scene;
    this.scale = scale;
    this.painted = new Painted(scene.getRoot());
  }

  /** The faults of what a scene shows. */
  public static List<Fault> of(Scene scene, Scale scale) {
    Audit audit = new Audit(scene, scale);
    List<Node> targets = audit.targets();
    targets.forEach(audit::target);
    audit.pairs(targets);
    targets.forEach(audit::covered);
    audit.twins(targets);
    List<Text> texts = audit.painted.texts();
    texts.forEach(audit::text);
    audit.textOnText(texts);
    texts.forEach(text -> audit.textOnKey(text, targets));
    audit.painted.all().forEach(audit::sign);
    audit.painted.all().forEach(audit::unpainted);
    audit.painted.all().forEach(audit::betweenPixels);
    audit.painted.all().forEach(audit::strays);
    audit.painted.all().forEach(audit::roomBelow);
    return List.copyOf(audit.faults);
  }

  private void fault(Rule rule, String form, Object... words) {
    faults.add(new Fault(rule, String.format(Locale.ROOT, form, words)));
  }

  private List<Node> targets() {
    return painted.all().stream()
        .filter(node -> node.getProperties().containsKey(Touch.MARK))
        .filter(node -> !node.isDisabled() && !node.isMouseTransparent())
        .toList();
  }

  private double mm(double px) {
    return px / scale.pixelsPerMm();
  }

  private void target(Node node) {
    Bounds bounds = Painted.inScene(node);
    double least =
        node.getStyleClass().contains("primary") || node.getStyleClass().contains("danger")
            ? LEAST_PRIMARY_MM
            : LEAST_MM;
    if (mm(bounds.getWidth()) < least || mm(bounds.getHeight()) < least) {
      fault(
          Rule.SIZE,
          "%s is %.1f by %.1f mm",
          name(node),
          mm(bounds.getWidth()),
          mm(bounds.getHeight()));
    }
    inside(node, bounds);
    String spoken = node.getAccessibleText();
    if (node.getAccessibleRole() != AccessibleRole.BUTTON || spoken == null || spoken.isBlank()) {
      fault(Rule.SILENT, "%s says nothing to a screen reader", name(node));
    }
    if (node instanceof Region region) {
      if (!region.getStyleClass().contains(ON_A_DRAWING)) {
        outline(region);
      }
    }
  }

  private void outline(Region region) {
    Color around = painted.under(region, Painted.middle(region)).orElse(Color.WHITE);
    Color line = Painted.outline(region).orElse(around);
    boolean drawnWithin =
        region.getChildrenUnmodifiable().stream().anyMatch(node -> isPlate(node, around));
    if (Contrast.of(line, around) < 3 && !drawnWithin) {
      fault(Rule.OUTLINE, "%s: outline %.1f to 1", name(region), Contrast.of(line, around));
    }
  }

  private static boolean isPlate(Node node, Color around) {
    return node instanceof Region plate
        && Painted.outline(plate).map(line -> Contrast.of(line, around) >= 3).orElse(false);
  }

  private void inside(Node node, Bounds bounds) {
    Bounds window =
        new BoundingBox(
            -SLACK_PX,
            -SLACK_PX,
            scene.getWidth() + 2 * SLACK_PX,
            scene.getHeight() + 2 * SLACK_PX);
    if (!window.contains(bounds)) {
      fault(Rule.OUTSIDE, "%s reaches out of the window: %s", name(node), bounds);
    }
  }

  private void pairs(List<Node> targets) {
    for (int one = 0; one < targets.size(); one++) {
      for (int other = one + 1; other < targets.size(); other++) {
        pair(targets.get(one), targets.get(other));
      }
    }
  }

  private void pair(Node one, Node other) {
    Bounds a = Painted.inScene(one);
    Bounds b = Painted.inScene(other);
    double across = Math.max(b.getMinX() - a.getMaxX(), a.getMinX() - b.getMaxX());
    double down = Math.max(b.getMinY() - a.getMaxY(), a.getMinY() - b.getMaxY());
    double gap = mm(Math.max(across, down));
    boolean discards =
        one.getProperties().containsKey(Touch.DISCARDS)
            || other.getProperties().containsKey(Touch.DISCARDS);
    if (gap < -0.3) {
      fault(Rule.OVERLAP, "%s and %s overlap", name(one), name(other));
    } else if (gap < (discards ? DISCARD_GAP_MM : GAP_MM)) {
      fault(Rule.GAP, "%.1f mm between %s and %s", gap, name(one), name(other));
    }
  }

  /** What is no key may lie on one, too, and is painted after it: half of the key is hidden. */
  private void covered(Node key) {
    if (key.getStyleClass().contains(ON_A_DRAWING)) {
      return;
    }
    Bounds plate = Painted.inScene(key);
    painted.after(key).stream()
        .filter(node -> !(node instanceof Text) && !isWithin(node, key))
        .filter(node -> Painted.fill(node).isPresent())
        .filter(node -> shared(plate, Painted.inScene(node)) > SLACK_PX)
        .findFirst()
        .ifPresent(node -> fault(Rule.OVERLAP, "%s lies on %s", name(node), name(key)));
  }

  /** How far two boxes reach into each other, the less of both ways; below 0 if they do not. */
  private static double shared(Bounds one, Bounds other) {
    double across =
        Math.min(one.getMaxX(), other.getMaxX()) - Math.max(one.getMinX(), other.getMinX());
    double down =
        Math.min(one.getMaxY(), other.getMaxY()) - Math.max(one.getMinY(), other.getMinY());
    return Math.min(across, down);
  }

  /**
   * Two keys that say the same: nobody could tell which does what. Two lists have keys of their own
   * to turn them, beside each.
   */
  private void twins(List<Node> targets) {
    Map<String, Long> said =
        targets.stream()
            .filter(node -> !isOfAList(node))
            .map(Audit::words)
            .filter(words -> !words.isBlank())
            .collect(Collectors.groupingBy(words -> words, TreeMap::new, Collectors.counting()));
    said.forEach(
        (words, times) -> {
          if (times > 1) {
            fault(Rule.TWINS, "%d keys say \"%s\"", times, words);
          }
        });
  }

  /** All that is written on a target; a letter within the shape of a part is no word. */
  private static String words(Node node) {
    return node instanceof Parent parent
        ? new Painted(parent)
            .texts().stream()
                .filter(text -> !isOnADrawing(text))
                .map(Text::getText)
                .collect(Collectors.joining(" "))
        : "";
  }

  private static boolean isOfAList(Node node) {
    return List.of("Up", "Down").contains(words(node))
        && Stream.iterate(node.getParent(), Objects::nonNull, Node::getParent)
            .anyMatch(Pager.class::isInstance);
  }

  private void text(Text text) {
    double capital = mm(text.getFont().getSize() * CAPITAL);
    boolean display = capital >= DISPLAY_MM;
    boolean free = display || isAsLargeAsItsRoom(text) || isOnADrawing(text);
    double least = free ? TEXT_MM : TEXT_MM * scale.textFactor();
    if (capital < least - 0.01) {
      fault(Rule.SMALL_TEXT, "%s: capitals of %.2f mm", name(text), capital);
    }
    Bounds bounds = Painted.inScene(text);
    inside(text, bounds);
    for (Parent up = text.getParent(); up != null; up = up.getParent()) {
      if (up instanceof Region region && !contains(Painted.inScene(region), bounds)) {
        fault(
            Rule.CUT_TEXT,
            "%s does not fit %s: %s, %s",
            name(text),
            name(region),
            box(bounds),
            box(Painted.inScene(region)));
        break;
      }
    }
    whole(text);
    contrast(text, display);
  }

  /**
   * A single letter on a key of a pad and a number in a figure are as large as those let them be; a
   * message keeps to its row, and its letters lose the person's factor where it is long.
   */
  private static boolean isAsLargeAsItsRoom(Text text) {
    return isWithin(text, AS_LARGE_AS_ITS_ROOM);
  }

  private static boolean isWithin(Node node, Set<String> styles) {
    for (Parent up = node.getParent(); up != null; up = up.getParent()) {
      if (up.getStyleClass().stream().anyMatch(styles::contains)) {
        return true;
      }
    }
    return false;
  }

  /** Words that were left out. */
  private void whole(Text text) {
    if (text.getParent() instanceof FitText words && words.isCut()) {
      fault(Rule.CUT_TEXT, "%s is all that is seen of \"%s\"", name(text), words.words());
    }
  }

  /**
   * A cylinder's number or a mark's letter: it stands between parts of a drawing that is as large
   * as the glass, and grows with the person's text only as far as they leave it room.
   */
  private static boolean isOnADrawing(Text text) {
    return text.getStyleClass().stream().anyMatch(IN_A_DRAWING::contains);
  }

  private static String box(Bounds box) {
    return String.format(
        Locale.ROOT,
        "%.1f to %.1f across, %.1f to %.1f down",
        box.getMinX(),
        box.getMaxX(),
        box.getMinY(),
        box.getMaxY());
  }

  private static boolean contains(Bounds outer, Bounds inner) {
    return inner.getMinX() >= outer.getMinX() - SLACK_PX
        && inner.getMaxX() <= outer.getMaxX() + SLACK_PX
        && inner.getMinY() >= outer.getMinY() - SLACK_PX
        && inner.getMaxY() <= outer.getMaxY() + SLACK_PX;
  }

  private void contrast(Text text, boolean display) {
    Color under = painted.under(text, Painted.middle(text)).orElse(Color.WHITE);
    Color ink = text.getFill() instanceof Color colour ? colour : Color.WHITE;
    double ratio = Contrast.of(ink, under);
    if (ratio < (display ? 4.5 : 7)) {
      fault(Rule.CONTRAST, "%s: %.1f to 1", name(text), ratio);
    }
  }

  private void textOnText(List<Text> texts) {
    for (int one = 0; one < texts.size(); one++) {
      for (int other = one + 1; other < texts.size(); other++) {
        if (core(texts.get(one)).intersects(core(texts.get(other)))) {
          fault(Rule.TEXT_ON_TEXT, "%s and %s", name(texts.get(one)), name(texts.get(other)));
        }
      }
    }
  }

  /** Words above a key whose tails hang into it; a zone of a drawing has words of its own below. */
  private void textOnKey(Text text, List<Node> targets) {
    if (isOnADrawing(text) || targets.stream().anyMatch(key -> isWithin(text, key))) {
      return;
    }
    Bounds ink = near(Painted.ink(text));
    targets.stream()
        .filter(key -> !key.getStyleClass().contains(ON_A_DRAWING))
        .filter(key -> Painted.inScene(key).intersects(ink))
        .forEach(key -> fault(Rule.TEXT_ON_KEY, "%s reaches into %s", name(text), name(key)));
  }

  private Bounds near(Bounds ink) {
    double air = scale.px(AIR_MM);
    return new BoundingBox(
        ink.getMinX(), ink.getMinY() - air, ink.getWidth(), ink.getHeight() + 2 * air);
  }

  private static boolean isWithin(Node node, Node outer) {
    return Stream.iterate(node, Objects::nonNull, Node::getParent).anyMatch(outer::equals);
  }

  /**
   * The toolkit fills a shape with black where nobody says otherwise, and draws lines and paths
   * with it; no token of a look is that black.
   */
  private void unpainted(Node node) {
    if (node instanceof Shape shape && !(shape instanceof Text)) {
      boolean line = shape instanceof Path || shape instanceof Line || shape instanceof Polyline;
      Paint paint = line ? shape.getStroke() : shape.getFill();
      if (Color.BLACK.equals(paint) && !shape.getLayoutBounds().isEmpty()) {
        fault(Rule.UNPAINTED, "%s", name(shape));
      }
    }
  }

  /** A plate's edges lie on whole pixels. */
  private void betweenPixels(Node node) {
    if (node instanceof Region plate && isPainted(plate)) {
      Bounds bounds = Painted.inScene(plate);
      boolean torn =
          DoubleStream.of(bounds.getMinX(), bounds.getMinY(), bounds.getMaxX(), bounds.getMaxY())
              .anyMatch(edge -> Math.abs(edge - Math.rint(edge)) > EDGE_PX);
      if (torn) {
        fault(
            Rule.BETWEEN_PIXELS,
            "%s: %.2f to %.2f across, %.2f to %.2f down",
            name(plate),
            bounds.getMinX(),
            bounds.getMaxX(),
            bounds.getMinY(),
            bounds.getMaxY());
      }
    }
  }

  private static boolean isPainted(Region region) {
    return Painted.fill(region).isPresent()
        || Painted.outline(region).isPresent()
        || region.getBorder() != null;
  }

  /** The line of a sign is held against the middle of the box that it is drawn in. */
  private void sign(Node node) {
    if (node instanceof Shape line && line.getStyleClass().stream().anyMatch(SIGNS::contains)) {
      Color under = painted.under(line, Painted.middle(line)).orElse(Color.WHITE);
      Color ink = line.getStroke() instanceof Color color ? color : Color.WHITE;
      if (Contrast.of(ink, under) < 3) {
        fault(Rule.SIGN, "%s: %.1f to 1", name(line.getParent()), Contrast.of(ink, under));
      }
    }
  }

  /** Where the letters stand: the line's box less the air above and below. */
  private static Bounds core(Text text) {
    Bounds box = Painted.inScene(text);
    double air = 0.15 * text.getFont().getSize();
    return new BoundingBox(
        box.getMinX() + 1,
        box.getMinY() + air,
        Math.max(0, box.getWidth() - 2),
        Math.max(0, box.getHeight() - 2 * air));
  }

  private void strays(Node node) {
    boolean marked = node.getProperties().containsKey(Touch.MARK);
    boolean answers =
        node.getOnMouseClicked() != null
            || node.getOnMousePressed() != null
            || node.getOnMouseReleased() != null
            || node.getOnTouchPressed() != null
            || node.getOnTouchReleased() != null;
    if (answers && !marked) {
      fault(Rule.UNMARKED, "%s answers to presses", name(node));
    }
    if (node instanceof Control) {
      fault(Rule.STOCK_CONTROL, "%s", name(node));
    }
  }

  private void roomBelow(Node node) {
    if (node instanceof Pager<?> list) {
      new RoomBelow(scale)
          .of(list)
          .ifPresent(said -> fault(Rule.ROOM_BELOW, "%s: %s", name(list), said));
    }
  }

  private static String name(Node node) {
    String words =
        node instanceof Text text
            ? text.getText()
            : new Painted(node instanceof Parent parent ? parent : new Region())
                .texts().stream().map(Text::getText).findFirst().orElse("");
    return node.getClass().getSimpleName() + node.getStyleClass() + " \"" + words + "\"";
  }
}
