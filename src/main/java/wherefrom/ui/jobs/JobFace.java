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
    days = job.standing().map(standing -> new DayKnots(touch, standing.day()));
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

  private boolean isDrawn() {
    return engine.isPresent()
        && DRAWN * getWidth() >= touch.scale().px(LEAST_DRAWN_MM) * touch.scale().textFactor();
  }

  private boolean hasRoomForDays() {
    return days.isPresent() && getHeight() >= computeMinHeight(-1) + days.get().minHeight(-1);
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
    double left = isDrawn() ? Math.floor(DRAWN * getWidth()) : 0;
    engine.ifPresent(
        drawn -> {
          drawn.setVisible(isDrawn());
          drawn.resizeRelocate(0, 0, left, getHeight());
        });
    double x = left > 0 ? left + gap : 0;
    double wide = getWidth() - x;
    double line = touch.small("x").minHeight(-1);
    boolean told = hasRoomForDays();
    double low = told ? days.get().minHeight(-1) : 0;
    double large = touch.scale().fontPx(NAME_MM) * LINE;
    double high = Math.min(Math.max(large, line), getHeight() - line - low);
    double spare = Math.max(0, getHeight() - high - line - low);
    name.resizeRelocate(x, spare / 3, wide, high);
    lines(x, spare / 3 + high, wide, line);
    days.ifPresent(
        knots -> {
          knots.setVisible(told);
          knots.resizeRelocate(x, getHeight() - low, wide, low);
        });
  }

  private void lines(double x, double y, double wide, double line) {
    double right = when.leastLineWidth();
    boolean both = sofar.leastLineWidth() + gap + right <= wide;
    when.setVisible(both);
    sofar.resizeRelocate(x, y, both ? wide - right - gap : wide, line);
    when.resizeRelocate(x + wide - right, y, right, line);
  }
}
