package wherefrom.ui.drawn;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import wherefrom.drawing.Anchor;
import wherefrom.drawing.Asked;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.MarkPlan;
import wherefrom.drawing.PartFigure;
import wherefrom.drawing.PartState;
import wherefrom.drawing.PlacedMark;
import wherefrom.drawing.Shape;
import wherefrom.drawing.Sign;
import wherefrom.drawing.StopRings;
import wherefrom.drawing.Target;
import wherefrom.engine.Layout;
import wherefrom.parts.Place;
import wherefrom.ui.controls.Touch;

/**
 * A drawing on the glass: the engine from above or below, a cylinder large, the mains, one bearing.
 * It is drawn anew when its size changes; when states change, only the groups of the places that
 * changed are. The picture itself takes no touch; its zones do.
 */
public final class DrawnEngine extends Region {
  private final Asked asked;
  private final Function<Bounds, Drawing> maker;
  private final Optional<DrawnZones> zones;
  private final Group picture = new Group();
  private final Group words = new Group();
  private final Group here = new Group();
  private final CarrierNodes carriers = new CarrierNodes();
  private final Map<Place, PartNode> parts = new HashMap<>();
  private final IdentityHashMap<Anchor, Group> marks = new IdentityHashMap<>();
  private final IdentityHashMap<Anchor, List<Object>> marked = new IdentityHashMap<>();
  private Optional<Drawing> drawing = Optional.empty();
  private Function<Place, PartState> states = place -> PartState.IN;
  private Set<Place> pointed = Set.of();
  private Set<Place> wrong = Set.of();
  private Set<Place> right = Set.of();
  private boolean pointing = true;
  private Predicate<Target> live = target -> true;
  private double drawnWidth;
  private double drawnHeight;
  private int redrawn;

  /**
   * @param maker makes the drawing for a room
   * @param tapped told of the zone that is tapped; none where the drawing is dead to touch
   */
  private DrawnEngine(
      Touch touch,
      Layout layout,
      Asked asked,
      Function<Bounds, Drawing> maker,
      Optional<Consumer<Tap>> tapped) {
    this.asked = asked;
    this.maker = maker;
    this.zones = tapped.map(listener -> new DrawnZones(touch, layout, asked, listener));
    getStyleClass().add("drawn");
    picture.setMouseTransparent(true);
    picture.setManaged(false);
    setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** A drawing whose zones can be tapped. */
  public static DrawnEngine keyed(
      Touch touch,
      Layout layout,
      Asked asked,
      Function<Bounds, Drawing> maker,
      Consumer<Tap> tapped) {
    return new DrawnEngine(touch, layout, asked, maker, Optional.of(tapped));
  }

  /** A drawing that only shows. */
  public static DrawnEngine shown(
      Touch touch, Layout layout, Asked asked, Function<Bounds, Drawing> maker) {
    return new DrawnEngine(touch, layout, asked, maker, Optional.empty());
  }

  /**
   * Shows states.
   *
   * @param newStates what is so at each place that is tracked
   * @param newPointed the places that this is about
   */
  public void show(Function<Place, PartState> newStates, Set<Place> newPointed) {
    states = newStates;
    boolean moved = !newPointed.equals(pointed);
    pointed = Set.copyOf(newPointed);
    drawing.ifPresent(drawn -> refresh(drawn, moved));
  }

  /** Leaves zones out that lead to nothing here; to be told before it is laid out. */
  public void live(Predicate<Target> leadsOn) {
    live = leadsOn;
  }

  /**
   * Rings places of a stop.
   *
   * @param wrongPlaces a red ring with the octagon
   * @param rightPlaces a black ring
   */
  public void rings(Set<Place> wrongPlaces, Set<Place> rightPlaces) {
    if (!wrongPlaces.equals(wrong) || !rightPlaces.equals(right)) {
      wrong = Set.copyOf(wrongPlaces);
      right = Set.copyOf(rightPlaces);
      drawing.ifPresent(this::point);
    }
  }

  /** The box of rings and arrows, in this drawing's coordinates; empty where there are none. */
  Optional<javafx.geometry.Bounds> pointers() {
    return here.getChildren().isEmpty()
        ? Optional.empty()
        : Optional.of(here.getParent().localToParent(here.getBoundsInParent()));
  }

  /** Whether what this is about has its ring or arrow; it needs none where a wire leads to it. */
  public void pointing(boolean isPointing) {
    if (pointing != isPointing) {
      pointing = isPointing;
      drawing.ifPresent(this::point);
    }
  }

  /**
   * Where a wire that comes from below ends at a place: at its lower edge, beside a number that
   * lies below it. Empty where the place is not drawn or lies in the upper half, where the wire
   * would cross other parts.
   */
  public Optional<Point2D> wireEnd(Place place) {
    return drawing.flatMap(drawn -> WireEnd.of(drawn, place).filter(end -> isUnmarked(drawn, end)));
  }

  /** What is drawn; empty before it has a size. */
  public Optional<Drawing> drawing() {
    return drawing;
  }

  /** The box that the drawing covers, in the coordinates of what holds it. */
  Optional<Rectangle2D> covered() {
    double left = getLayoutX();
    double top = getLayoutY();
    return drawing
        .map(Drawing::frame)
        .map(box -> new Rectangle2D(left + box.x(), top + box.y(), box.width(), box.height()));
  }

  /** How many places' groups were drawn or changed so far. */
  int redrawn() {
    return redrawn;
  }

  @Override
  protected void layoutChildren() {
    if (getWidth() <= 0 || getHeight() <= 0) {
      return;
    }
    if (getWidth() != drawnWidth || getHeight() != drawnHeight) {
      drawnWidth = getWidth();
      drawnHeight = getHeight();
      build(maker.apply(new Bounds(0, 0, drawnWidth, drawnHeight)));
    }
    zones.ifPresent(DrawnZones::lay);
  }

  private void build(Drawing drawn) {
    drawing = Optional.of(drawn);
    carriers.build(drawn, states);
    words.getChildren().setAll(ShapeNodes.of(drawn.words()));
    Group figures = new Group();
    Group markGroup = new Group();
    parts.clear();
    marks.clear();
    marked.clear();
    for (PartFigure figure : drawn.parts()) {
      PartNode node = new PartNode(figure, look(figure.place()));
      parts.put(figure.place(), node);
      figures.getChildren().add(node);
      redrawn++;
    }
    for (Anchor anchor : drawn.anchors()) {
      Group group = new Group();
      marks.put(anchor, group);
      markGroup.getChildren().add(group);
    }
    picture
        .getChildren()
        .setAll(carriers.ground(), figures, words, markGroup, carriers.marks(), here);
    zones(drawn);
    drawn.anchors().forEach(this::mark);
    point(drawn);
  }

  private DrawnAs look(Place place) {
    return pointed.contains(place) ? DrawnAs.HERE : asked.look(place, states);
  }

  private void refresh(Drawing drawn, boolean moved) {
    carriers.show(drawn, states);
    parts.forEach(
        (place, node) -> {
          DrawnAs look = look(place);
          if (look != node.look()) {
            node.look(look);
            redrawn++;
          }
        });
    drawn.anchors().forEach(this::mark);
    if (moved) {
      point(drawn);
    }
    words(drawn);
  }

  private void mark(Anchor anchor) {
    Group group = marks.get(anchor);
    List<Object> now = stateOf(anchor);
    if (group == null || now.equals(marked.put(anchor, now))) {
      return;
    }
    Drawing drawn = drawing.orElseThrow();
    group.getChildren().clear();
    for (PlacedMark mark : MarkPlan.of(anchor, asked, states, pointed, drawn.glass())) {
      group.getChildren().addAll(ShapeNodes.of(mark.shapes()));
    }
  }

  /** Whether a wire from below to this end runs over no mark but the small tags of what is out. */
  private boolean isUnmarked(Drawing drawn, Point2D end) {
    return marks.keySet().stream()
        .flatMap(at -> MarkPlan.of(at, asked, states, pointed, drawn.glass()).stream())
        .filter(mark -> mark.sign() != Sign.OUT)
        .noneMatch(
            mark ->
                Math.abs(mark.at().x() - end.getX()) < mark.side() / 2
                    && mark.at().y() + mark.side() / 2 > end.getY());
  }

  /** All that its marks follow from. */
  private List<Object> stateOf(Anchor anchor) {
    List<Object> all = new ArrayList<>();
    for (Anchor.Held held : anchor.held()) {
      all.add(states.apply(held.place()));
      all.add(pointed.contains(held.place()));
    }
    return all;
  }

  private void point(Drawing drawn) {
    List<Shape> rings = new ArrayList<>(StopRings.of(drawn, wrong, right));
    for (Place place : pointing ? pointed : Set.<Place>of()) {
      drawn.find(place).ifPresent(it -> rings.addAll(it.pointer().here(drawn.glass())));
    }
    here.getChildren().setAll(ShapeNodes.of(rings));
    NumbersAbove.show(here, words, drawn, rings);
    keepLettersFree(drawn);
  }

  private void keepLettersFree(Drawing drawn) {
    Set<Place> shown = pointing ? pointed : Set.of();
    ValveLetters.keepFree(
        words,
        shown.stream()
            .flatMap(place -> drawn.find(place).stream())
            .map(PartFigure::pointer)
            .toList());
  }

  private void zones(Drawing drawn) {
    List<Node> children = new ArrayList<>(List.of(picture));
    zones.ifPresent(made -> children.addAll(made.of(drawn, live)));
    getChildren().setAll(children);
    words(drawn);
  }

  private void words(Drawing drawn) {
    zones.ifPresent(made -> made.tell(drawn, states));
  }
}
