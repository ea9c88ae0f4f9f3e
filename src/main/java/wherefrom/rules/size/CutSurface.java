package wherefrom.rules.size;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.BoreSpot;
import wherefrom.engine.CamBearingSpot;
import wherefrom.engine.Layout;
import wherefrom.engine.Site;
import wherefrom.engine.ValveSpot;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.workings.catalogue.size.SizeSteps;

/**
 * A kind of surface that is cut in steps from a standard size, and the parts that must be of its
 * size. All journals of a kind are ground alike (TM 5-3805-262-34, 4-24).
 */
public enum CutSurface {
  ROD_JOURNAL(
      Feature.ROD_JOURNAL, PartKind.ROD_SHELL, ChangeKind.ROD_JOURNALS_GROUND, "ground", true),
  MAIN_JOURNAL(
      Feature.MAIN_JOURNAL, PartKind.MAIN_SHELL, ChangeKind.MAIN_JOURNALS_GROUND, "ground", true),
  BORE(Feature.BORE, PartKind.PISTON, ChangeKind.BORED, "bored", false);

  private final Feature feature;
  private final PartKind kind;
  private final ChangeKind change;
  private final String cut;
  private final boolean under;

  CutSurface(Feature feature, PartKind kind, ChangeKind change, String cut, boolean under) {
    this.feature = feature;
    this.kind = kind;
    this.change = change;
    this.cut = cut;
    this.under = under;
  }

  /** The surface that parts of this kind must fit. */
  public static Optional<CutSurface> find(PartKind kind) {
    return Arrays.stream(values()).filter(one -> one.kind == kind).findFirst();
  }

  /** The surface that this change cuts to a size. */
  public static Optional<CutSurface> find(ChangeKind change) {
    return Arrays.stream(values()).filter(one -> one.change == change).findFirst();
  }

  /** The surface that this plan measures. */
  public static Optional<CutSurface> find(Feature feature) {
    return Arrays.stream(values()).filter(one -> one.feature == feature).findFirst();
  }

  public PartKind kind() {
    return kind;
  }

  /** The change that cuts it. */
  public ChangeKind change() {
    return change;
  }

  /** {@code ground} or {@code bored}. */
  public String cut() {
    return cut;
  }

  /** {@code rod journal}, {@code cylinder bore}. */
  public String word() {
    return feature.word();
  }

  /** The key of the plan of readings that measures it. */
  public String plan() {
    return feature.key();
  }

  /** The result of that plan that names the next step. */
  public String nextStep() {
    return under ? "undersize" : "oversize";
  }

  /** Whether all of them are cut to one size. */
  public boolean isAlike() {
    return under;
  }

  /** Whether wear makes it smaller. */
  public boolean wearsSmaller() {
    return under;
  }

  /** Every one that the engine has, as {@link Feature#where} names it. */
  public List<String> listWhere(Layout layout) {
    return feature.where(layout);
  }

  public Subject.AFeature subject(String where) {
    return new Subject.AFeature(feature, where);
  }

  /** The one that a part in this place runs on: {@code B3}, {@code M2}. */
  public static String where(Place place) {
    return place
        .spot()
        .match(
            ValveSpot::key,
            BoreSpot::key,
            rod -> new BoreSpot(rod.cylinder()).key(),
            main -> new Site.Main(main.number()).key(),
            CamBearingSpot::key);
  }

  /** How far from standard a diameter is, in the direction that cutting takes it. */
  public Amount off(Amount standard, Amount diameter) {
    Amount same = diameter.to(standard.unit());
    return under
        ? new Amount(standard.number().subtract(same.number()), standard.unit())
        : new Amount(same.number().subtract(standard.number()), standard.unit());
  }

  /** The diameter so far from standard. */
  public Amount diameter(Amount standard, Amount off) {
    Amount same = off.to(standard.unit());
    return new Amount(
        under ? standard.number().subtract(same.number()) : standard.number().add(same.number()),
        standard.unit());
  }

  /** The steps that parts are made in. */
  public SizeSteps steps() {
    return under ? SizeSteps.UNDERSIZES : SizeSteps.OVERSIZES;
  }

  /** The size of the part that fits the surface so far from standard. */
  public GoodsSize size(Amount step) {
    return GoodsSize.of(under ? GoodsSize.Sense.UNDER : GoodsSize.Sense.OVER, step);
  }

  /** {@code standard}, {@code 0.010 in under}, {@code 0.50 mm over}. */
  public String words(Amount step) {
    return SizeStepWords.of(step, under);
  }

  /** As a parts counter hears it: {@code 0.010 in under (ten under)}. */
  public String said(Amount step) {
    return SizeStepWords.said(step, under);
  }
}
