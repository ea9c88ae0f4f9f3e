package wherefrom.drawing;

import java.util.ArrayList;
import java.util.List;
import wherefrom.engine.Bank;

/** The zones of the engine's drawings. Where any would be too small, all of it is one. */
final class EngineZones {
  private static final double WIDEST_KEY = 176;

  private EngineZones() {}

  /** The pan rail's lower edge, or that of the numbers below it. */
  static double rail(EngineGeometry at) {
    return at.bounds().bottom() - at.foot().height(at.glass());
  }

  /** Each cylinder has its half of the drawing. */
  static List<Zone> above(EngineGeometry at) {
    return zones(at, at.bounds().y(), at.bounds().bottom());
  }

  /**
   * Each cylinder has its half of the drawing, and the mains have the row below. Without that row
   * all of it is one, as the mains would have none.
   */
  static List<Zone> below(EngineGeometry at) {
    if (at.foot() != BelowPanRail.KEYS) {
      return List.of(whole(at, at.bounds().y(), rail(at)));
    }
    List<Zone> zones = new ArrayList<>(zones(at, at.bounds().y(), rail(at)));
    mains(at, zones);
    return zones;
  }

  private static Zone whole(EngineGeometry at, double top, double bottom) {
    Bounds all = Bounds.between(at.bounds().x(), top, at.bounds().right(), bottom);
    return new Zone(new Target.Whole(), all, "engine");
  }

  private static List<Zone> zones(EngineGeometry at, double top, double bottom) {
    List<Zone> zones = new ArrayList<>();
    double gap = at.glass().gap();
    for (Bank bank : at.layout().banks()) {
      boolean lower = at.sign(bank) > 0;
      double from = at.isTwo() && lower ? at.axis() + gap / 2 : top;
      double to = at.isTwo() && !lower ? at.axis() - gap / 2 : bottom;
      for (int cylinder : bank.cylinders()) {
        double x = at.boreX(cylinder) - (at.pitch() - gap) / 2;
        Bounds box = Bounds.between(x, from, x + at.pitch() - gap, to);
        zones.add(new Zone(new Target.Cylinder(cylinder), box, "cylinder " + cylinder));
      }
    }
    boolean fits = zones.stream().allMatch(zone -> isLargeEnough(zone.bounds(), at.glass()));
    return fits ? zones : List.of(whole(at, top, bottom));
  }

  static boolean isLargeEnough(Bounds box, Glass glass) {
    return box.width() >= glass.finger() && box.height() >= glass.finger();
  }

  /** As wide as their spacing allows, and no key reaches out of the drawing. */
  private static double keyWidth(EngineGeometry at) {
    Glass glass = at.glass();
    double first = at.mains().x(1) - at.bounds().x();
    double last = at.bounds().right() - at.mains().x(at.mains().count());
    double inside = 2 * Math.min(first, last);
    double usual = Math.min(at.mains().spacing() - glass.gap(), glass.px(WIDEST_KEY));
    return Math.min(inside, usual);
  }

  static boolean hasKeyForEachMain(EngineGeometry at) {
    return keyWidth(at) >= at.glass().finger();
  }

  private static void mains(EngineGeometry at, List<Zone> zones) {
    double top = at.bounds().bottom() - at.glass().key();
    double high = at.glass().key();
    if (!hasKeyForEachMain(at)) {
      Bounds row = new Bounds(at.bounds().x(), top, at.bounds().width(), high);
      zones.add(new Zone(new Target.Mains(), row, "mains"));
      return;
    }
    double wide = keyWidth(at);
    for (int main = 1; main <= at.mains().count(); main++) {
      Bounds box = new Bounds(at.mains().x(main) - wide / 2, top, wide, high);
      zones.add(new Zone(new Target.Main(main), box, "M" + main));
    }
  }
}
