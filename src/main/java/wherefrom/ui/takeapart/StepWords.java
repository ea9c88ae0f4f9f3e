package wherefrom.ui.takeapart;

import java.util.List;
import wherefrom.engine.Layout;
import wherefrom.job.Caution;
import wherefrom.parts.Part;
import wherefrom.parts.Places;

/** What to mind before a part comes out. */
final class StepWords {
  private StepWords() {}

  /**
   * What to mark before the part moves.
   *
   * @param named whether the part is named, because words about another one stand before
   */
  static String mark(Layout layout, Part part, boolean named) {
    String mark = mark(layout, part);
    return named && !mark.isEmpty() ? "Next, " + part.kind().word() + ": " + mark : mark;
  }

  private static String mark(Layout layout, Part part) {
    return switch (Places.orientation(layout, part.kind())) {
      case NONE -> "";
      case TOP_END -> "Mark its top end before it comes out.";
      case HALF -> "Upper and lower shells are never exchanged: tag each at once.";
      case FACING -> "Mark which side faces the front.";
    };
  }

  /** The first caution, and how many more there are; empty when there is none. */
  static String caution(List<Caution> all) {
    if (all.isEmpty()) {
      return "";
    }
    String more = all.size() == 1 ? "" : " And " + (all.size() - 1) + " more.";
    return "Caution. " + all.get(0).sentence() + more;
  }
}
