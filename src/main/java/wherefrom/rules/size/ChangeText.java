package wherefrom.rules.size;

import java.util.Optional;
import wherefrom.quantity.Amount;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.Unit;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;

/** Reads how much is changed, once, where it comes in. */
public final class ChangeText {
  private ChangeText() {}

  /**
   * A change as a person says it.
   *
   * @param detail size or remark; kept as it was said, with the unit where none was
   * @param usual the unit of a figure that carries none
   */
  public static Change read(ChangeKind kind, String where, String detail, Unit usual) {
    Optional<Amount> size = SizeText.read(detail, usual);
    boolean bare = size.isPresent() && detail.strip().equals(figure(size.get()));
    return new Change(kind, where, size, bare ? size.get().text() : detail);
  }

  private static String figure(Amount size) {
    return size.number().toPlainString();
  }

  /** A change as a logbook holds it; what its words leave to the job's unit is not read yet. */
  public static Change ofLogbook(ChangeKind kind, String where, String detail) {
    Optional<Amount> size =
        SizeText.isStandard(detail)
            ? Optional.empty()
            : SizeText.read(detail, Unit.ONE).filter(read -> read.dimension() == Dimension.LENGTH);
    return new Change(kind, where, size, detail);
  }

  /** The same with its size, where only the job's unit was lacking. */
  public static Change in(Unit usual, Change change) {
    return change.size().isPresent()
        ? change
        : new Change(
            change.kind(), change.where(), SizeText.read(change.detail(), usual), change.detail());
  }
}
