package wherefrom.ui.drawn;

import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import javafx.geometry.Orientation;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;
import javafx.scene.layout.Region;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.BigPartRing;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Target;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.parts.BigPartName;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;

/**
 * The engine, drawn as large as the room allows, with FRONT, from where it is seen, and FLYWHEEL
 * above it: the one elastic thing of a screen. Where the room is too small first the captions
 * leave, then the drawing; of one that can be tapped the key <i>Engine</i> stays.
 *
 * <p>A tap tells what was meant: a cylinder, a main, all mains, or the whole engine where its zones
 * would be under 18 mm; {@code EnginePages} opens what follows.
 */
public final class EngineView extends Region {
  private final Touch touch;
  private final Layout layout;
  private final Set<PartKind> tracked;
  private final Optional<Consumer<Tap>> tapped;
  private final Captions captions;
  private final TouchKey key;
  private final EngineRoom room;
  private Optional<DrawnEngine> drawn = Optional.empty();
  private View side = View.ABOVE;
  private BelowPanRail foot = BelowPanRail.NAMES;
  private Optional<PartKind> kind = Optional.empty();
  private Optional<EngineSight> madeFrom = Optional.empty();
  private ShownPlaces places = ShownPlaces.all();
  private boolean wired;
  private Optional<BigPartName> ringed = Optional.empty();
  private Predicate<Target> live = target -> true;

  private EngineView(
      Touch touch, Layout layout, Set<PartKind> tracked, Optional<Consumer<Tap>> tapped) {
    this.touch = touch;
    this.layout = layout;
    this.tracked = Set.copyOf(tracked);
    this.tapped = tapped;
    captions = new Captions(touch);
    room = new EngineRoom(touch.scale(), layout, captions);
    key = touch.key("Engine", () -> tap(Tap.of(new Target.Whole())));
    key.setManaged(false);
    getStyleClass().add("engine-view");
    Panes.grow(this);
  }

  /** A drawing whose zones can be tapped. */
  public static EngineView keyed(
      Touch touch, Layout layout, Set<PartKind> tracked, Consumer<Tap> tapped) {
    return new EngineView(touch, layout, tracked, Optional.of(tapped));
  }

  /** A drawing that is dead to touch. */
  public static EngineView shown(Touch touch, Layout layout, Set<PartKind> tracked) {
    return new EngineView(touch, layout, tracked, Optional.empty());
  }

  /** The side on which a kind of part is seen. */
  public static View sideOf(PartKind kind) {
    return switch (kind.home()) {
      case VALVE, CAM_BEARING -> View.ABOVE;
      case ROD, MAIN, BORE -> View.BELOW;
    };
  }

  /** From where it is seen. */
  public View side() {
    return side;
  }

  /** Shows this side. */
  public void look(View from) {
    side = from;
    redraw();
  }

  /** Shows the other side. */
  public void turnOver() {
    look(side == View.ABOVE ? View.BELOW : View.ABOVE);
  }

  /** What stands below an engine seen from below: the mains' names unless told otherwise. */
  public void foot(BelowPanRail what) {
    foot = what;
    redraw();
  }

  /** Leaves IN and EX out, as a wire from below would strike them. */
  public void unlettered() {
    room.letter(false);
  }

  /** Leaves zones out that lead to nothing; to be told before anything is shown. */
  public void live(Predicate<Target> leadsOn) {
    live = leadsOn;
  }

  /** Rings the place of a big part, seen from its side; or rings none. */
  public void ring(Optional<BigPartName> name) {
    ringed = name;
    room.letter(name.isEmpty());
    look(name.map(one -> BigPartRing.sideOf(one.kind())).orElse(side));
  }

  /** The one kind that is meant, seen from its side; all others are thin. */
  public void choose(PartKind chosen) {
    kind = Optional.of(chosen);
    look(sideOf(chosen));
  }

  /**
   * Shows states.
   *
   * @param newStates what is so at each place, such as {@link PartStates#of(
   *     wherefrom.job.EngineJob)}
   * @param newHere the places that this is about: amber, each with its ring or arrow
   */
  public void show(Function<Place, PartState> newStates, Set<Place> newHere) {
    places = ShownPlaces.about(newStates, newHere);
    redraw();
  }

  /**
   * Shows a stop: a red ring with the octagon at the wrong places, a black ring at the right ones;
   * none of them is amber.
   */
  public void stop(
      Function<Place, PartState> newStates, Set<Place> wrongPlaces, Set<Place> rightPlaces) {
    places = ShownPlaces.stop(newStates, wrongPlaces, rightPlaces);
    redraw();
  }

  /** Whether a wire leads to the place, so that it needs neither ring nor arrow. */
  public void wired(boolean isWired) {
    wired = isWired;
    drawn.ifPresent(engine -> engine.pointing(!isWired));
  }

  /** Whether a room is large enough for the drawing, at least without its captions. */
  public boolean hasRoom(double width, double height) {
    return room.has(side, foot, width, height);
  }

  /** Whether a room is large enough for the drawing with the names of its ends. */
  public boolean hasNamedRoom(double width, double height) {
    return room.hasNamed(side, foot, width, height);
  }

  /** Whether it may be made lower for words below it. */
  public boolean yields(double width, double height, double lower) {
    return room.yields(side, foot, width, height, lower);
  }

  /** Whether it is drawn as large in a narrower room, and its ends named there. */
  public boolean spares(double width, double height, double narrower) {
    return room.spares(side, foot, width, height, narrower);
  }

  /** How high it is with its captions where it is drawn as wide as this. */
  public double heightFor(double width) {
    return room.heightFor(side, foot, width);
  }

  /** Whether there is room for the drawing; known once it was laid out. */
  public boolean isDrawn() {
    return drawn.filter(DrawnEngine::isVisible).isPresent();
  }

  /**
   * Where a wire that comes from below ends at a place, in this view's coordinates: at its lower
   * edge. Empty where the place is not drawn, or lies beyond the crank so that the wire would cross
   * other parts.
   */
  public Optional<Point2D> wireEnd(Place place) {
    if (!isDrawn()) {
      return Optional.empty();
    }
    DrawnEngine engine = drawn.orElseThrow();
    return engine.wireEnd(place).map(at -> at.add(engine.getLayoutX(), engine.getLayoutY()));
  }

  /** The box that the drawing covers, in this view's coordinates; empty where it has left. */
  public Optional<Rectangle2D> frame() {
    return isDrawn() ? drawn.flatMap(DrawnEngine::covered) : Optional.empty();
  }

  private void tap(Tap tap) {
    tapped.ifPresent(listener -> listener.accept(tap));
  }

  private void redraw() {
    Asked asked = new Asked(tracked, kind, places.beside());
    EngineSight wanted = new EngineSight(asked, side, foot, ringed, room.isLettered());
    if (madeFrom.filter(wanted::equals).isEmpty()) {
      madeFrom = Optional.of(wanted);
      build(wanted);
    }
    DrawnEngine engine = drawn.orElseThrow();
    engine.pointing(!wired);
    places.on(engine);
    requestLayout();
  }

  private void build(EngineSight sight) {
    Function<Bounds, Drawing> making = sight.making(layout, touch.scale());
    DrawnEngine engine =
        tapped.isPresent()
            ? DrawnEngine.keyed(touch, layout, sight.asked(), making, this::tap)
            : DrawnEngine.shown(touch, layout, sight.asked(), making);
    engine.setManaged(false);
    engine.live(live);
    drawn = Optional.of(engine);
    captions.tell(layout, side);
    getChildren().setAll(engine, captions);
    if (tapped.isPresent()) {
      getChildren().add(key);
    }
    requestLayout();
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinWidth(double height) {
    return tapped.isPresent() ? key.minWidth(-1) : 0;
  }

  @Override
  protected double computeMinHeight(double width) {
    return tapped.isPresent() ? Math.ceil(key.minHeight(-1)) : 0;
  }

  @Override
  protected double computePrefWidth(double height) {
    return Math.max(computeMinWidth(height), captions.least());
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width);
  }

  @Override
  protected void layoutChildren() {
    double width = getWidth();
    double height = getHeight();
    if (drawn.isEmpty()) {
      redraw();
    }
    if (width <= 0 || height <= 0) {
      return;
    }
    EngineRoom.Fit fit = room.fit(side, foot, width, height);
    DrawnEngine engine = drawn.orElseThrow();
    engine.setVisible(fit.isDrawn());
    captions.setVisible(fit.captions().isPresent());
    fit.captions().ifPresent(captions::show);
    key.setVisible(!fit.isDrawn() && tapped.isPresent());
    if (fit.isDrawn()) {
      Bounds in = fit.room();
      Panes.place(engine, in.x(), in.y(), in.width(), in.height());
      captions.put(fit.captioned(), width);
      engine.layout();
      captions.keepFree(engine.pointers().map(engine::localToParent));
    } else {
      placeKey(width, height);
    }
  }

  /** As wide as the rows round it, at the lower edge: a key alone in an empty room is lost. */
  private void placeKey(double width, double height) {
    double high = Math.min(height, Math.ceil(key.minHeight(width)));
    Panes.place(key, 0, height - high, width, high);
  }
}
