package wherefrom.rules.consequence;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import wherefrom.engine.Layout;
import wherefrom.engine.Site;
import wherefrom.engine.Spot;
import wherefrom.parts.Place;
import wherefrom.quantity.Amount;

/**
 * A change or a finding.
 *
 * @param where which one, as {@link Reach} says; empty for the whole engine
 * @param size how much, of any length unit; empty where nobody said
 * @param detail size or remark as it was said, such as {@code 0.010 in}; may be empty
 */
public record Change(ChangeKind kind, String where, Optional<Amount> size, String detail) {
  private static final Set<ChangeKind> OWN_PARTS =
      EnumSet.of(
          ChangeKind.LIFTER_REPLACED,
          ChangeKind.PUSHROD_REPLACED,
          ChangeKind.ROCKER_REPLACED,
          ChangeKind.VALVE_REPLACED,
          ChangeKind.ROD_REPLACED,
          ChangeKind.ROD_RESIZED);

  public static Change of(ChangeKind kind) {
    return at(kind, "");
  }

  public static Change at(ChangeKind kind, String where) {
    return new Change(kind, where, Optional.empty(), "");
  }

  /** Of a size that is an amount already. */
  public static Change sized(ChangeKind kind, String where, Optional<Amount> size) {
    return new Change(kind, where, size, size.map(Amount::text).orElse(""));
  }

  /** With a remark that is no size. */
  public static Change noting(ChangeKind kind, String where, String remark) {
    return new Change(kind, where, Optional.empty(), remark);
  }

  /**
   * Whether it speaks of the very parts that have their home there, wherever they sit: a new
   * rocker, a resized rod with its cap. Anything else speaks of surfaces of block, head, crank or
   * cam, and so of whatever sits there.
   */
  public boolean isOfItsOwnParts() {
    boolean housingOfARod =
        site() instanceof Site.BigEnd
            && (kind == ChangeKind.CAP_LOST || kind == ChangeKind.CAP_REPLACED);
    return housingOfARod || OWN_PARTS.contains(kind);
  }

  /** In words: {@code head milled, left bank, 0.010 in}. */
  public String words() {
    return kind.words()
        + (where.isEmpty() ? "" : ", " + place())
        + (detail.isEmpty() ? "" : ", " + detail);
  }

  private String place() {
    return site()
        .match(
            whole -> "",
            at -> at.spot().words(),
            end -> "rod " + end.cylinder(),
            main -> "main " + main.number(),
            bank -> bank.bank() + " bank");
  }

  /** Where it is; the spot, where it names a part's place. */
  public Site site() {
    return kind.reach() == Reach.BANK && !where.isEmpty()
        ? new Site.OfBank(where)
        : Place.find(where).<Site>map(at -> new Site.At(at.spot())).orElseGet(() -> Site.of(where));
  }

  /** The spot that it names, when it names one. */
  Optional<Spot> findSpot() {
    return site().findSpot();
  }

  /** What is wrong with it for an engine, in a sentence; empty when nothing is. */
  public Optional<String> findFault(Setting setting) {
    Layout layout = setting.layout();
    if (!kind.isOffered(setting)) {
      return Optional.of(
          "\""
              + kind.words()
              + "\" cannot be done here: "
              + (kind == ChangeKind.STUDS_SCREW_IN
                  ? "the rockers of this engine are on shafts."
                  : "the lifters of this engine are "
                      + (setting.isFlat() ? "flat" : "rollers")
                      + " already."));
    }
    boolean known =
        kind.reach() == Reach.PLACE
            ? where.isEmpty() || Place.find(where).isPresent() || findSpot().isPresent()
            : kind.reach().where(layout).contains(where);
    return known
        ? Optional.empty()
        : Optional.of(
            "\""
                + where
                + "\" is not where this engine can have \""
                + kind.words()
                + "\": give one of "
                + String.join(", ", kind.reach().where(layout))
                + ".");
  }
}
