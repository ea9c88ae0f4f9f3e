package wherefrom.job.print;

import java.util.function.Function;

/** What is printed on one label. */
public sealed interface Face permits TagFace, ScannerFace {

  /** What the function for its kind makes of it. */
  default <R> R match(Function<TagFace, R> tag, Function<ScannerFace, R> scanner) {
    if (this instanceof TagFace one) {
      return tag.apply(one);
    }
    return scanner.apply((ScannerFace) this);
  }
}
