package wherefrom.drawing;

import java.util.List;
import wherefrom.engine.Arrangement;
import wherefrom.engine.Bank;
import wherefrom.engine.Layout;
import wherefrom.engine.RockerMount;
import wherefrom.engine.ValveSpot;

/**
 * Where everything of an engine lies on the paper, made from its layout. There is one size only,
 * the bore pitch; all else is a multiple of it. The front is on the left; y is measured from the
 * crank's line. Seen from above the left bank lies below that line, seen from below above it.
 */
public final class EngineGeometry {
  static final double DAMPER = 0.15;
  static final double COVER = 0.20;
  static final double STAGGER = 0.20;
  static final double FLANGE = 0.08;
  static final double WHEEL = 0.13;

  /** Half the height of the engine seen from below. */
  static final double RAIL_EDGE = 1.02;

  /** Where the middle of a bearing's end view lies. */
  static final double END_VIEW = 0.72;

  static final double ROD_RADIUS = 0.16;
  static final double MAIN_RADIUS = 0.12;
  private static final double THROW = 0.20;
  private static final double INLINE_BEHIND = 0.66;
  private static final double FOUR_STROKES = 720;

  private final Layout layout;
  private final View view;
  private final Glass glass;
  private final BelowPanRail foot;
  private final double pitch;
  private final boolean numbersOutside;
  private final boolean lettered;
  private final double left;
  private final double top;
  private final MainRow mains;

  private EngineGeometry(
      Layout layout, View view, Bounds room, Glass glass, BelowPanRail foot, boolean letters) {
    this.layout = layout;
    this.view = view;
    this.glass = glass;
    this.foot = view == View.BELOW ? foot : BelowPanRail.NONE;
    double free = pitchFor(room, 0);
    this.numbersOutside = NumberFit.isTight(layout, view, free, glass);
    double smaller = pitchFor(room, 2 * SideLetters.row(glass));
    this.lettered =
        letters && view == View.ABOVE && !numbersOutside && SideLetters.fit(free, smaller, glass);
    this.pitch = numbersOutside ? pitchFor(room, 2 * numberRow()) : lettered ? smaller : free;
    this.left = room.x() + (room.width() - width()) / 2;
    this.top = room.y() + (room.height() - height()) / 2;
    double behindFirst = front() + (end() + (isTwo() ? STAGGER / 2 : 0) - 0.5) * pitch;
    this.mains = new MainRow(layout.mains(), bores(), behindFirst, pitch);
  }

  /**
   * The engine as large as the room allows, in its middle.
   *
   * @param layout a sound one
   * @param foot what stands below the pan rail; nothing does from above
   */
  public static EngineGeometry of(
      Layout layout, View view, Bounds room, Glass glass, BelowPanRail foot) {
    return new EngineGeometry(layout, view, room, glass, foot, false);
  }

  /** The same with IN and EX outside the heads, seen from above, where there is room for them. */
  public static EngineGeometry lettered(
      Layout layout, View view, Bounds room, Glass glass, BelowPanRail foot) {
    return new EngineGeometry(layout, view, room, glass, foot, true);
  }

  private double pitchFor(Bounds room, double rows) {
    double high = room.height() - foot.height(glass) - rows;
    return Math.min(room.width() / pitchesLong(), high / (up() + down()));
  }

  private double pitchesLong() {
    return DAMPER + COVER + blockLong() + FLANGE + WHEEL;
  }

  private double blockLong() {
    return 2 * end() + bores() - 1 + (isTwo() ? STAGGER : 0);
  }

  private double up() {
    return view == View.BELOW ? RAIL_EDGE : outward().stub();
  }

  private double down() {
    if (view == View.BELOW) {
      return RAIL_EDGE;
    }
    return isTwo() ? outward().stub() : INLINE_BEHIND;
  }

  private double end() {
    return isTwo() ? 0.60 : 0.70;
  }

  /** The height of a row for numbers that find no room between the parts. */
  private double numberRow() {
    return NumberFit.ROW * glass.letter();
  }

  public Layout layout() {
    return layout;
  }

  public View view() {
    return view;
  }

  public Glass glass() {
    return glass;
  }

  BelowPanRail foot() {
    return foot;
  }

  /** The bore pitch, in the drawing's unit. */
  public double pitch() {
    return pitch;
  }

  public double width() {
    return pitchesLong() * pitch;
  }

  public double height() {
    return (up() + down()) * pitch + foot.height(glass) + 2 * outerRow();
  }

  private double outerRow() {
    return numbersOutside ? numberRow() : lettered ? SideLetters.row(glass) : 0;
  }

  /** Whether IN and EX stand outside the heads. */
  public boolean isLettered() {
    return lettered;
  }

  /** Whether the cylinders' numbers stand outside the engine, as they find no room inside. */
  public boolean hasNumbersOutside() {
    return numbersOutside;
  }

  /** What the drawing covers. */
  public Bounds bounds() {
    return new Bounds(left, top, width(), height());
  }

  /** The crank's line. */
  public double axis() {
    return top + outerRow() + up() * pitch;
  }

  double left() {
    return left;
  }

  /** The front of the block. */
  double front() {
    return left + (DAMPER + COVER) * pitch;
  }

  /** The block's end at the flywheel. */
  double rear() {
    return front() + blockLong() * pitch;
  }

  public boolean isTwo() {
    return layout.banks().size() == 2;
  }

  boolean isOpposed() {
    return layout.arrangement() == Arrangement.OPPOSED;
  }

  boolean isShaft() {
    return layout.rockers() == RockerMount.SHAFT;
  }

  /** Bores along the crank: of the longer bank. */
  int bores() {
    return layout.banks().stream().mapToInt(bank -> bank.cylinders().size()).max().orElse(1);
  }

  Outward outward() {
    if (!isTwo()) {
      return Outward.INLINE;
    }
    return isOpposed() ? Outward.OPPOSED : Outward.VEE;
  }

  Bank bank(int cylinder) {
    return layout
        .findBank(cylinder)
        .orElseThrow(() -> new IllegalArgumentException("no such cylinder: " + cylinder));
  }

  private boolean isLeft(Bank bank) {
    return layout.banks().indexOf(bank) == 0;
  }

  private boolean isLeading(Bank bank) {
    return bank.name().equals(layout.leadingBank());
  }

  /** Which way is outward on the paper: 1 is down. */
  int sign(Bank bank) {
    if (!isTwo()) {
      return -1;
    }
    return isLeft(bank) == (view == View.ABOVE) ? 1 : -1;
  }

  int sign(int cylinder) {
    return sign(bank(cylinder));
  }

  private int placeInBank(int cylinder) {
    return bank(cylinder).cylinders().indexOf(cylinder);
  }

  /** Where a cylinder lies along the crank. */
  public double boreX(int cylinder) {
    double behind = isTwo() && !isLeading(bank(cylinder)) ? STAGGER : 0;
    return front() + (end() + placeInBank(cylinder) + behind) * pitch;
  }

  /** Where a valve lies along the crank: a quarter pitch before or behind its bore. */
  public double valveX(ValveSpot valve) {
    Bank bank = bank(valve.cylinder());
    char first = bank.valves().charAt(2 * placeInBank(valve.cylinder()));
    boolean before = first == valve.side().letter();
    return boreX(valve.cylinder()) + (before ? -0.25 : 0.25) * pitch;
  }

  ValveRow row(ValveSpot valve) {
    return new ValveRow(valveX(valve), axis(), sign(valve.cylinder()) * pitch);
  }

  ValveRow row(int cylinder) {
    return new ValveRow(boreX(cylinder), axis(), sign(cylinder) * pitch);
  }

  /** The crank at the middle of a pin: the angle is the bank's, less the turn at which it fires. */
  public Point pin(int cylinder) {
    int cylinders = layout.cylinders().size();
    double turn = layout.firingOrder().indexOf(cylinder) * FOUR_STROKES / cylinders;
    double bank = isLeft(bank(cylinder)) ? layout.vee() / 2.0 : -layout.vee() / 2.0;
    double angle = Math.toRadians((isTwo() ? bank : 90) - turn);
    double x = front() + (end() + placeInBank(cylinder) + (isTwo() ? STAGGER / 2 : 0)) * pitch;
    return new Point(x, axis() - Math.sin(angle) * THROW * pitch);
  }

  /** Where a rod's cap lies on its pin: that of the leading bank is nearer the front. */
  Point rodCap(int cylinder) {
    Point pin = pin(cylinder);
    double aside = isLeading(bank(cylinder)) ? -0.105 : 0.105;
    return new Point(pin.x() + (isTwo() ? aside * pitch : 0), pin.y());
  }

  /** The middle of a rod bearing's end view. */
  public Point rodView(int cylinder) {
    return row(cylinder).at(END_VIEW, 0);
  }

  /** The middle of a main bearing's end view. */
  public Point mainView(int main) {
    return new Point(mains.x(main), axis() + END_VIEW * pitch);
  }

  /** The main bearings along the crank. */
  public MainRow mains() {
    return mains;
  }

  /** All cylinders, bank by bank, front to rear. */
  public List<Integer> cylinders() {
    return layout.banks().stream().flatMap(bank -> bank.cylinders().stream()).toList();
  }
}
