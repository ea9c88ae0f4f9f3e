package wherefrom.ui.bags;

import java.util.List;
import wherefrom.job.entry.AtAssembly;
import wherefrom.job.entry.BagFilled;
import wherefrom.job.entry.BoltHole;

/** What was said of a bag, with one thing changed. */
final class BagBits {
  private BagBits() {}

  static BagFilled with(BagFilled said, String what, int bigPart, String where, int pieces) {
    return new BagFilled(
        said.number(), what, bigPart, where, pieces, said.holes(), said.order(), said.with());
  }

  static BagFilled with(BagFilled said, String order, AtAssembly with) {
    return new BagFilled(
        said.number(),
        said.what(),
        said.bigPart(),
        said.where(),
        said.pieces(),
        said.holes(),
        order,
        with);
  }

  static BagFilled with(BagFilled said, List<BoltHole> holes) {
    return new BagFilled(
        said.number(),
        said.what(),
        said.bigPart(),
        said.where(),
        said.pieces(),
        holes,
        said.order(),
        said.with());
  }
}
