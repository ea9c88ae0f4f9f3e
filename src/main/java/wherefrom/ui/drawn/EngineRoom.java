package wherefrom.ui.drawn;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.EngineGeometry;
import wherefrom.drawing.Glass;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.ui.controls.Scale;

/** How much of an engine a room has space for: all of it, the drawing alone, or nothing. */
final class EngineRoom {
  /** Below this pitch the drawing leaves, in mm. */
  private static final double LEAST_PITCH_MM = 90 / Glass.UNITS_PER_MM;

  private static final double GAP_MM = 1.6;

  private static final double LARGER = 1.15;

  /** Words beside a drawing may make it so much smaller. */
  private static final double NEARLY = 0.85;

  /** For words below it a drawing may be made so much smaller. */
  private static final double YIELD = 0.75;

  private final Scale scale;
  private final Layout layout;
  private final Captions captions;
  private final Glass glass;
  private boolean lettered = true;

  EngineRoom(Scale scale, Layout layout, Captions captions) {
    this.scale = scale;
    this.layout = layout;
    this.captions = captions;
    this.glass = Glass.screen(scale.pixelsPerMm(), scale.textFactor());
  }

  /** Whether IN and EX stand at the valves, where there is room for them. */
  void letter(boolean letters) {
    lettered = letters;
  }

  boolean isLettered() {
    return lettered;
  }

  /**
   * What a room shows, in its coordinates.
   *
   * @param isDrawn whether there is space for the drawing
   * @param captions which captions there is space for too; empty where for none
   * @param room where the drawing stands, so that the captions have theirs
   * @param captioned the box to which the captions stand
   * @param pitch of the drawing
   */
  record Fit(
      boolean isDrawn,
      Optional<Captions.Shown> captions,
      Bounds room,
      Bounds captioned,
      double pitch) {}

  /** What is shown in a room of this size. */
  Fit fit(View side, BelowPanRail foot, double width, double height) {
    List<Fit> fits =
        Arrays.stream(Captions.Shown.values())
            .filter(shown -> captions.least(shown) <= width)
            .map(
                shown ->
                    shown.isBeside()
                        ? beside(shown, side, foot, width, height)
                        : captioned(shown, side, foot, width, height))
            .filter(Fit::isDrawn)
            .toList();
    if (fits.isEmpty()) {
      return bare(side, foot, width, height);
    }
    boolean less = fits.size() > 1 && isDearlyTold(fits.get(0), fits.get(1));
    return fits.get(less ? 1 : 0);
  }

  /** Large words that have a line of their own leave where the drawing is much larger for it. */
  private boolean isDearlyTold(Fit all, Fit fewer) {
    return scale.isLarge()
        && fewer.captions().equals(Optional.of(Captions.Shown.ENDS))
        && fewer.pitch() >= LARGER * all.pitch();
  }

  private Fit captioned(
      Captions.Shown shown, View side, BelowPanRail foot, double width, double height) {
    double above = captionRoom(shown, side, foot, width, height);
    EngineGeometry at = geometry(side, foot, width, height - above);
    Bounds box = at.bounds();
    Bounds under = new Bounds(box.x(), above + box.y() - gap(), box.width(), box.height());
    Bounds room = new Bounds(0, above, width, height - above);
    return new Fit(isLargeEnough(at), Optional.of(shown), room, under, at.pitch());
  }

  /** Beside a drawing that is as low as its room captions cost it little or nothing. */
  private Fit beside(
      Captions.Shown shown, View side, BelowPanRail foot, double width, double height) {
    double left = captions.left(shown);
    double wide = width - left - captions.right(shown);
    EngineGeometry at = geometry(side, foot, wide, height);
    double alone = geometry(side, foot, width, height).pitch();
    Bounds box = at.bounds();
    return new Fit(
        isLargeEnough(at) && at.pitch() >= NEARLY * alone,
        Optional.of(shown),
        new Bounds(left, 0, wide, height),
        new Bounds(left + box.x(), box.y(), box.width(), box.height()),
        at.pitch());
  }

  private Fit bare(View side, BelowPanRail foot, double width, double height) {
    EngineGeometry at = geometry(side, foot, width, height);
    return new Fit(
        isLargeEnough(at),
        Optional.empty(),
        new Bounds(0, 0, width, height),
        at.bounds(),
        at.pitch());
  }

  /** Whether a room is large enough for the drawing, at least without its captions. */
  boolean has(View side, BelowPanRail foot, double width, double height) {
    return width > 0 && height > 0 && isLargeEnough(geometry(side, foot, width, height));
  }

  /** Whether a room is large enough for the drawing with the names of its ends. */
  boolean hasNamed(View side, BelowPanRail foot, double width, double height) {
    return width > 0 && height > 0 && fit(side, foot, width, height).captions().isPresent();
  }

  /**
   * Whether a drawing with the names of its ends may be made lower: it is not much smaller then,
   * and a finger still finds each cylinder where it found each.
   */
  boolean yields(View side, BelowPanRail foot, double width, double height, double lower) {
    double pitch = fit(side, foot, width, height).pitch();
    double least = pitch < zoned() ? YIELD * pitch : Math.max(zoned(), YIELD * pitch);
    return hasNamed(side, foot, width, lower) && fit(side, foot, width, lower).pitch() >= least;
  }

  /** Whether a drawing with the names of its ends is as large in a narrower room. */
  boolean spares(View side, BelowPanRail foot, double width, double height, double narrower) {
    return narrower > 0
        && hasNamed(side, foot, narrower, height)
        && fit(side, foot, narrower, height).pitch() >= fit(side, foot, width, height).pitch();
  }

  /** From this pitch each cylinder has a zone of its own. */
  private double zoned() {
    return glass.finger() + glass.gap();
  }

  /** How high the drawing is with its captions where it is drawn as wide as this. */
  double heightFor(View side, BelowPanRail foot, double width) {
    EngineGeometry at = geometry(side, foot, width, Double.MAX_VALUE / 4);
    return at.height() + captionsOver(at) + gap();
  }

  /** How high captions and their gap are over a drawing that leaves them room. */
  private double captionRoom(
      Captions.Shown shown, View side, BelowPanRail foot, double width, double height) {
    double one = captions.height(Double.MAX_VALUE);
    EngineGeometry at = geometry(side, foot, width, height - one - gap());
    return captions.height(shown, Math.max(at.width(), captions.least(shown))) + gap();
  }

  private double captionsOver(EngineGeometry at) {
    return captions.height(Math.max(at.width(), captions.least()));
  }

  private EngineGeometry geometry(View side, BelowPanRail foot, double width, double height) {
    Bounds room = new Bounds(0, 0, Math.max(1, width), Math.max(1, height));
    return lettered
        ? EngineGeometry.lettered(layout, side, room, glass, foot)
        : EngineGeometry.of(layout, side, room, glass, foot);
  }

  private boolean isLargeEnough(EngineGeometry at) {
    return at.pitch() >= scale.px(LEAST_PITCH_MM);
  }

  private double gap() {
    return scale.px(GAP_MM);
  }
}
