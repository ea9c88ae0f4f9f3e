package wherefrom.job.money;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.OptionalDouble;
import wherefrom.job.entry.GoodsMeasured;
import wherefrom.job.entry.GoodsWay;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Unit;
import wherefrom.rules.size.CutSurface;
import wherefrom.workings.catalogue.accept.Acceptance;
import wherefrom.workings.catalogue.accept.Acceptance.Ruling;

/**
 * One of the things that came, held against the size that the list asks for: right, wrong or
 * undecided, as {@link Acceptance} decides within the tolerance.
 */
public record OneMeasured(GoodsMeasured entry) {
  private static final BigDecimal HALF = new BigDecimal("0.5");

  /** What the right one measures: half of an undersize is on each side of a journal. */
  public Amount expected() {
    Amount standard = entry.standard();
    BigDecimal step = entry.step().to(standard.unit()).number();
    BigDecimal expected =
        switch (entry.way()) {
          case WALL -> standard.number().add(step.multiply(HALF));
          case INSIDE -> standard.number().subtract(step);
          default -> standard.number().add(step);
        };
    return new Amount(expected, standard.unit());
  }

  public Ruling ruling() {
    return acceptance().decision();
  }

  /** Whether it was measured so finely that any reading at all could be right. */
  boolean canBeAccepted() {
    return acceptance().canAccept();
  }

  private Acceptance acceptance() {
    Unit unit = unit();
    double expected = expected().in(unit);
    double either = entry.tolerance().in(unit);
    return new Acceptance(
        entry.reading().in(unit),
        entry.off().in(unit),
        OptionalDouble.of(expected - either),
        OptionalDouble.of(expected + either));
  }

  public boolean isAccepted() {
    return ruling() == Ruling.ACCEPT;
  }

  private Unit unit() {
    return entry.standard().unit();
  }

  private static String plain(Amount size) {
    return new Amount(size.number().stripTrailingZeros(), size.unit()).text();
  }

  /** {@code wall at the crown 0.0776 in, wanted 0.0775 in, within 0.001 in}. */
  public String words() {
    return entry.way().words()
        + " "
        + entry.reading().text()
        + ", wanted "
        + plain(expected())
        + ", within "
        + entry.tolerance().text();
  }

  /** {@code Right: …}, or what to do where it is not. */
  public String sentence() {
    return switch (ruling()) {
      case ACCEPT -> "Right: " + words() + ".";
      case REJECT -> "Wrong: " + words() + "." + looksLike().map(like -> " " + like).orElse("");
      case UNDECIDED -> "Undecided: " + words() + ". Measure better, or ask the supplier.";
    };
  }

  /** Which size it seems to be, where things of its kind come in sizes. */
  private Optional<String> looksLike() {
    return entry
        .what()
        .findGoods()
        .flatMap(goods -> goods.findKind())
        .flatMap(CutSurface::find)
        .map(surface -> looksLike(surface, step()));
  }

  private static String looksLike(CutSurface surface, Amount off) {
    return surface
        .steps()
        .findNear(off)
        .map(step -> "It measures like " + surface.words(step) + ".")
        .orElse("It is near no usual size.");
  }

  /** How far from standard the reading is, on the diameter. */
  private Amount step() {
    BigDecimal reading = entry.reading().to(unit()).number();
    BigDecimal more = reading.subtract(entry.standard().number());
    BigDecimal off =
        switch (entry.way()) {
          case WALL -> more.add(more);
          case INSIDE -> more.negate();
          default -> more;
        };
    return new Amount(off, unit());
  }

  /** Whether an undersize or oversize shows in this dimension. */
  static boolean showsSteps(GoodsWay way, CutSurface surface) {
    return surface == CutSurface.BORE
        ? way == GoodsWay.DIAMETER
        : way == GoodsWay.WALL || way == GoodsWay.INSIDE;
  }
}
