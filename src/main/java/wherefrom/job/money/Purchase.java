package wherefrom.job.money;

import java.util.Optional;
import wherefrom.engine.ValveSide;
import wherefrom.rules.consequence.Article;

/**
 * Something to buy that carries no tag, such as the cam.
 *
 * @param side of valves, as intake and exhaust valves are of two sizes; empty for all else
 * @param reason the rule and what it follows from
 */
public record Purchase(Article what, Optional<ValveSide> side, int pieces, String reason) {
  Purchase(Article what, int pieces, String reason) {
    this(what, Optional.empty(), pieces, reason);
  }

  /** What must be alike for two to be one line. */
  record Key(Article what, Optional<ValveSide> side) {}

  Key key() {
    return new Key(what, side);
  }

  Purchase of(int otherPieces) {
    return new Purchase(what, side, otherPieces, reason);
  }

  /** {@code head gaskets}, {@code valves, intake}. */
  public String words() {
    return what.words() + side.map(one -> ", " + one.word()).orElse("");
  }
}
