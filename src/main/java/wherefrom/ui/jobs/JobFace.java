package wherefrom.ui.jobs;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.CarrierFigure;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.EngineStates;
import wherefrom.drawing.PartState;
import wherefrom.drawing.View;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.shelf.Standing;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.drawn.Drawn;
import wherefrom.ui.drawn.DrawnEngine;
import wherefrom.ui.drawn.PartStates;

/** What stands on a job's tag: the engine as it stands, the name, how far it is, its days. */
final class JobFace extends Region {
  private static final double NAME_MM = 7.9;
  private static final double DRAWN = 0.38;
  private static final double LINE = 1.25;
  private static final double LEAST_DRAWN_MM = 40;

  /** In less height than this an engine would be a speck. */
  private static final double LEAST_HIGH_MM = 22;

  /** A face that is so high for its width has the engine above its words. */
  private static final double TALL = 0.75;

  /** About how wide an engine is for its height. */
  private static final double STRETCH = 1.9;

  private static final double MOST_DRAWN = 0.55;

  /** Of that, where the words are large. */
  private static final double MOST_BESIDE_LARGE = 0.44;

  private final Touch touch;
  private final double gap;
  private final Optional<DrawnEngine> engine;
  private final FitText name;
  private final FitText sofar;
  private final FitText when;
  private final Optional<DayKnots> days;

  JobFace(Touch touch, JobsModel.Line job) {
    this.touch = touch;
    this.gap = touch.scale().gap();
    engine = job.standing().map(this::drawing);
    name = touch.fit(job.name(), NAME_MM, Scale.SMALL_MM, true).within(1);
    String few = job.standing().isPresent() ? job.sofar() : "cannot be opened";
    sofar = touch.small(touch.brief(job.sofar(), few)).align(Pos.CENTER_LEFT).within(1);
    when = touch.small(job.when()).align(Pos.CENTER_RIGHT);
    days = job.standing().map(standing -> new DayKnots(touch, standing));
    engine.ifPresent(getChildren()::add);
    getChildren().addAll(name, sofar, when);
    days.ifPresent(getChildren()::add);
  }

  /** From the side that the work is on. */
  private DrawnEngine drawing(Standing standing) {
    Asked asked = Asked.of(standing.kinds());
    Drawn maker = new Drawn(standing.layout(), asked, touch.scale());
    Function<Bounds, Drawing> making =
        side(standing) == View.BELOW ? maker.below(BelowPanRail.NONE) : maker.above();
    DrawnEngine drawn =
        DrawnEngine.shown(touch, standing.layout(), asked, making.andThen(JobFace::bare));
    drawn.show(states(standing), Set.of());
    return drawn;
  }

  /** A head that is off is off on the small drawing, too, and what went with it. */
  static EngineStates states(Standing standing) {
    return new EngineStates(
        standing.layout(),
        place ->
            Optional.ofNullable(standing.states().get(place))
                .map(PartStates::of)
                .orElse(PartState.IN),
        (kind, spot) -> standing.carriers().find(standing.layout(), kind, spot));
  }

  /** So small it has no numbers, no marks and nothing to touch. */
  static Drawing bare(Drawing drawn) {
    return new Drawing(
        drawn.frame(),
        drawn.glass(),
        drawn.ground(),
        drawn.parts(),
        List.of(),
        List.of(),
        List.of(),
        drawn.carriers().stream().map(CarrierFigure::unmarked).toList());
  }

  private static View side(Standing standing) {
    return standing.day() == JobDay.TOGETHER ? View.BELOW : View.ABOVE;
  }

  /** Whether the engine stands beside the words. */
  private boolean isBeside() {
    return engine.isPresent()
        && !isOver()
        && getHeight() >= touch.scale().px(LEAST_HIGH_MM) * touch.scale().textFactor()
        && DRAWN * getWidth() >= touch.scale().px(LEAST_DRAWN_MM) * touch.scale().textFactor();
  }

  /** Whether the engine stands above the words, as on glass that stands upright. */
  private boolean isOver() {
    return engine.isPresent()
        && getHeight() >= TALL * getWidth()
        && overHigh() >= touch.scale().px(LEAST_HIGH_MM);
  }

  /** What the words leave of the height. */
  private double overHigh() {
    return getHeight() - computePrefHeight(-1) - gap - touch.scale().fontPx(NAME_MM);
  }

  private boolean hasRoomForDays(double height) {
    return days.isPresent() && height >= computeMinHeight(-1) + days.get().minHeight(-1) + air();
  }

  /** Between the words and the days below them. */
  private double air() {
    return gap / 2;
  }

  @Override
  protected double computeMinHeight(double width) {
    return name.minHeight(width) + touch.small("x").minHeight(-1);
  }

  @Override
  protected double computePrefHeight(double width) {
    return computeMinHeight(width) + days.map(knots -> knots.minHeight(-1) + gap).orElse(0.0);
  }

  @Override
  protected double computeMinWidth(double height) {
    return Math.max(when.leastLineWidth(), touch.scale().px(LEAST_DRAWN_MM));
  }

  @Override
  protected void layoutChildren() {
    double left = isBeside() ? besideWide() : 0;
    double over = isOver() ? overHigh() : 0;
    engine.ifPresent(
        drawn -> {
          drawn.setVisible(left > 0 || over > 0);
          Panes.place(drawn, 0, 0, over > 0 ? getWidth() : left, over > 0 ? over : getHeight());
        });
    words(left > 0 ? left + gap : 0, over > 0 ? over + gap : 0);
  }

  /** A high face has a wider engine. */
  private double besideWide() {
    double most = touch.isLarge() ? MOST_BESIDE_LARGE : MOST_DRAWN;
    double wanted = Math.min(most * getWidth(), STRETCH * getHeight());
    return Math.floor(Math.max(DRAWN * getWidth(), wanted));
  }

  private void words(double x, double y) {
    double wide = getWidth() - x;
    double room = getHeight() - y;
    double line = touch.small("x").minHeight(-1);
    boolean told = hasRoomForDays(room);
    double low = told ? days.get().minHeight(-1) + air() : 0;
    double large = touch.scale().fontPx(NAME_MM) * LINE;
    double high = Math.min(Math.max(large, line), room - line - low);
    double spare = Math.max(0, room - high - line - low);
    Panes.place(name, x, y + spare / 3, wide, high);
    lines(x, y + spare / 3 + high, wide, line);
    days.ifPresent(
        knots -> {
          knots.setVisible(told);
          Panes.place(knots, x, y + room - low + air(), wide, Math.max(0, low - air()));
        });
  }

  private void lines(double x, double y, double wide, double line) {
    double right = when.leastLineWidth();
    boolean both = sofar.leastLineWidth() + gap + right <= wide;
    when.setVisible(both);
    Panes.place(sofar, x, y, both ? wide - right - gap : wide, line);
    Panes.place(when, x + wide - right, y, right, line);
  }
}
