package wherefrom.report;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.DrawnAs;
import wherefrom.drawing.EngineAbove;
import wherefrom.drawing.EngineBelow;
import wherefrom.drawing.EngineGeometry;
import wherefrom.drawing.EngineStates;
import wherefrom.drawing.KindOutline;
import wherefrom.drawing.PartFigure;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Sign;
import wherefrom.drawing.View;
import wherefrom.engine.RodSpot;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Subject;
import wherefrom.job.pages.RecordEngine;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.pdf.Book;
import wherefrom.pdf.Ink;
import wherefrom.pdf.PaperPage;
import wherefrom.pdf.PaperPage.Side;

/** The engine drawn on paper, with what its lines mean. */
final class EngineArt {
  private static final double CAPTION = 3.4;

  /** Marks of which the drawing's own outline says as much. */
  private static final Set<Sign> SAID_BY_OUTLINE = Set.of(Sign.IN, Sign.OUT, Sign.FITTED);

  private final RecordEngine engine;
  private final List<Subject.AFeature> worked;
  private final Asked asked;

  EngineArt(RecordEngine engine) {
    this(engine, List.of());
  }

  /**
   * The engine with rings round surfaces.
   *
   * @param worked what is worked on; rings stand on what is seen from below
   */
  EngineArt(RecordEngine engine, List<Subject.AFeature> worked) {
    this.engine = engine;
    this.worked = List.copyOf(worked);
    this.asked = Asked.of(engine.kinds());
  }

  Asked asked() {
    return asked;
  }

  PartState state(Place place) {
    return Looks.of(engine, place);
  }

  /** The states of places, heads and rocker shafts. */
  EngineStates states() {
    return new EngineStates(engine.layout(), this::state, engine::findCarrier);
  }

  private EngineGeometry geometry(View view, Bounds room, BelowPanRail foot) {
    return EngineGeometry.of(engine.layout(), view, room, Book.GLASS, foot);
  }

  private Drawing drawing(EngineGeometry at) {
    return at.view() == View.ABOVE ? EngineAbove.of(at, asked) : EngineBelow.of(at, asked);
  }

  /**
   * A side of the engine with its captions.
   *
   * @param y of the captions' upper edge
   * @param high the most that the drawing takes below them
   * @return where it ends
   */
  double side(PaperPage page, View view, double y, double high) throws IOException {
    return side(page, view, Flow.LEFT, y, Flow.WIDE, high);
  }

  /** The same from a left edge and over a width. */
  double side(PaperPage page, View view, double x, double y, double wide, double high)
      throws IOException {
    return side(page, view, new Bounds(x, y, wide, high), true);
  }

  /** The same without marks, to lay parts on. */
  void plan(PaperPage page, View view, double x, double y, double wide, double high)
      throws IOException {
    side(page, view, new Bounds(x, y, wide, high), false);
  }

  private double side(PaperPage page, View view, Bounds box, boolean marks) throws IOException {
    double top = box.y() + CAPTION + 1.4;
    BelowPanRail foot = view == View.ABOVE ? BelowPanRail.NONE : BelowPanRail.NAMES;
    EngineGeometry size =
        geometry(view, PaperPage.room(box.x(), top, box.width(), box.height()), foot);
    double drawn = PaperPage.mm(size.height());
    EngineGeometry at = geometry(view, PaperPage.room(box.x(), top, box.width(), drawn), foot);
    captions(page, view, at.bounds(), box);
    page.drawing(drawing(at), asked, states(), marks);
    page.shapes(WorkRings.of(at, worked), DrawnAs.IN);
    return top + drawn;
  }

  /** Over the drawing; over more than that where a short engine leaves the words no room. */
  private void captions(PaperPage page, View view, Bounds drawn, Bounds box) throws IOException {
    double ends = 2 * page.widthOf("FLYWHEEL", CAPTION, true) + 8;
    double words = page.widthOf(seen(view), CAPTION, false);
    double wide = Math.max(PaperPage.mm(drawn.width()), Math.min(ends + words, box.width()));
    double middle = PaperPage.mm(drawn.x() + drawn.width() / 2);
    double left = Math.max(box.x(), Math.min(middle - wide / 2, box.right() - wide));
    double y = box.y() + CAPTION * 0.8;
    page.words(left, y, "FRONT", CAPTION, true);
    page.words(left + wide, y, "FLYWHEEL", CAPTION, true, Side.END, Ink.BLACK);
    double size = Math.min(CAPTION, CAPTION * (wide - ends) / words);
    page.words(left + wide / 2, y, seen(view), size, false, Side.MIDDLE, Ink.DARK);
  }

  private String seen(View view) {
    String from = view == View.ABOVE ? "from above" : "from below";
    if (engine.layout().banks().size() < 2) {
      return from;
    }
    String bank = engine.layout().banks().get(0).name();
    return from + ": the " + bank + " bank is " + (view == View.ABOVE ? "below" : "above");
  }

  /** The engine small, from above, with a frame round one cylinder. */
  void small(PaperPage page, int cylinder, double x, double y, double wide, double high)
      throws IOException {
    EngineGeometry at = geometry(View.ABOVE, PaperPage.room(x, y, wide, high), BelowPanRail.NONE);
    Drawing drawn = drawing(at);
    page.drawing(
        new Drawing(
            drawn.frame(),
            drawn.glass(),
            drawn.ground(),
            drawn.parts(),
            List.of(),
            List.of(),
            List.of(),
            drawn.carriers()),
        asked,
        states(),
        false);
    Optional<Bounds> box =
        drawn.parts().stream()
            .filter(figure -> cylinder(figure.place().spot()) == cylinder)
            .map(PartFigure::bounds)
            .reduce(Bounds::with);
    if (box.isPresent()) {
      frame(page, box.get().grown(0.06 * at.pitch()));
    }
  }

  private static void frame(PaperPage page, Bounds box) throws IOException {
    page.box(
        PaperPage.mm(box.x()),
        PaperPage.mm(box.y()),
        PaperPage.mm(box.width()),
        PaperPage.mm(box.height()),
        0.5,
        Ink.BLACK);
  }

  /** The cylinder that a part is drawn at; 0 of what stands between cylinders or in all views. */
  private static int cylinder(Spot spot) {
    return spot.match(ValveSpot::cylinder, bore -> 0, RodSpot::cylinder, main -> 0, bearing -> 0);
  }

  /**
   * What the lines and marks mean: only those that occur.
   *
   * @return where it ends
   */
  double legend(PaperPage page, double y) throws IOException {
    double x = Flow.LEFT;
    double row = y;
    for (Map.Entry<Sign, PartState> one : occurring().entrySet()) {
      boolean outline = SAID_BY_OUTLINE.contains(one.getKey());
      double symbol = outline ? 9 : 5.4;
      String words = words(one.getValue());
      double wide = symbol + 1.6 + page.widthOf(words, CAPTION, false) + 5;
      if (x + wide > Flow.RIGHT + 5) {
        x = Flow.LEFT;
        row += 7;
      }
      if (outline) {
        page.shapes(
            KindOutline.of(kind(), engine.layout(), PaperPage.room(x, row - 1.5, 9, 9), Book.GLASS),
            one.getValue().look());
      } else {
        Looks.mark(page, one.getKey(), x + 2.5, row + 3, 4.6);
      }
      page.words(x + symbol + 1.6, row + 4.2, words, CAPTION, false);
      x += wide;
    }
    return row + 7;
  }

  private PartKind kind() {
    return engine.kinds().contains(PartKind.ROCKER)
        ? PartKind.ROCKER
        : engine.kinds().stream().sorted().findFirst().orElse(PartKind.ROCKER);
  }

  private Map<Sign, PartState> occurring() {
    Map<Sign, PartState> found = new TreeMap<>();
    engine.states().keySet().stream()
        .map(this::state)
        .forEach(
            state -> {
              found.putIfAbsent(outlined(state).sign(), outlined(state));
              found.putIfAbsent(state.sign(), state);
            });
    return found;
  }

  /** The state that the outline alone says. */
  private static PartState outlined(PartState state) {
    return switch (state.look()) {
      case FITTED -> PartState.FITTED;
      case OUT -> PartState.OUT;
      default -> PartState.IN;
    };
  }

  private static String words(PartState state) {
    return switch (state.sign()) {
      case FITTED -> "fitted";
      case OUT -> "not in the engine";
      case IN -> "never came out";
      case NEW -> "a new part";
      default -> state.words();
    };
  }
}
