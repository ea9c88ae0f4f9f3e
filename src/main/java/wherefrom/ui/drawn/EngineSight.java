package wherefrom.ui.drawn;

import java.util.Optional;
import java.util.function.Function;
import wherefrom.drawing.Asked;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.Bounds;
import wherefrom.drawing.Drawing;
import wherefrom.drawing.View;
import wherefrom.engine.Layout;
import wherefrom.parts.BigPartName;
import wherefrom.ui.controls.Scale;

/**
 * What a drawing of the whole engine is made from; the same is not made twice.
 *
 * @param asked the kinds that are drawn
 * @param side from where it is seen
 * @param foot what stands below an engine seen from below
 * @param ringed the big part whose place has a ring
 * @param lettered whether IN and EX stand at the valves, where there is room for them
 */
record EngineSight(
    Asked asked, View side, BelowPanRail foot, Optional<BigPartName> ringed, boolean lettered) {

  /** Makes the drawing in a room. */
  Function<Bounds, Drawing> making(Layout layout, Scale scale) {
    Drawn maker = new Drawn(layout, asked, scale);
    boolean above = side == View.ABOVE;
    return ringed
        .map(name -> maker.ringed(side, above ? BelowPanRail.NONE : foot, name))
        .orElseGet(() -> above ? above(maker) : maker.below(foot));
  }

  private Function<Bounds, Drawing> above(Drawn maker) {
    return lettered ? maker.lettered() : maker.above();
  }
}
