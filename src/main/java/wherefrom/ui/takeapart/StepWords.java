package wherefrom.ui.takeapart;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.engine.Layout;
import wherefrom.job.EngineJob;
import wherefrom.job.PartRecord;
import wherefrom.job.bags.BagBook;
import wherefrom.job.bags.BigPartOrder;
import wherefrom.job.takeapart.OffFirst;
import wherefrom.parts.Orientation;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Places;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.Cue;
import wherefrom.ui.controls.ScreenAnswer;

/** What to mind before a part comes out. */
final class StepWords {
  private StepWords() {}

  /** What to mark before the part moves; empty where nothing binds. */
  static String mark(Layout layout, Part part) {
    return switch (Places.orientation(layout, part.kind())) {
      case NONE -> "";
      case TOP_END -> "mark its top end";
      case HALF -> "tag it at once";
      case FACING -> "mark the side to the front";
    };
  }

  /** The same as a step of its own beside the deed; a half is tagged when it is out. */
  static String first(Layout layout, Part part) {
    String mark = mark(layout, part);
    boolean before = !mark.isEmpty() && Places.orientation(layout, part.kind()) != Orientation.HALF;
    return before ? "first " + mark : mark;
  }

  /** What to mark, then the way out; a half is tagged when it is out. */
  static String markThenWay(Layout layout, Part part, String way) {
    String mark = mark(layout, part);
    boolean half = Places.orientation(layout, part.kind()) == Orientation.HALF;
    return mark.isEmpty() ? way : half ? way + ", " + mark : mark + ", then " + way;
  }

  /**
   * How it comes out. A pivot's nut or bolt lies over the rocker, so that the two come off together
   * (common practice, no source).
   *
   * @param kinds those that the job tracks
   */
  static String way(Set<PartKind> kinds, Part part) {
    return switch (part.kind()) {
      case PUSHROD, LIFTER -> "lift it out";
      case ROCKER -> kinds.contains(PartKind.PIVOT) ? "take it off with its pivot" : "take it off";
      case PIVOT -> "take it out of its rocker";
      case KEEPERS, RETAINER, SPRING -> "take it off";
      case VALVE, ROD, PISTON -> "push it out";
      case CAM_BEARING -> "drive it out with a bearing tool";
      case ROD_CAP, MAIN_CAP -> "bolts or nuts off, take it off";
      case ROD_SHELL, MAIN_SHELL -> "slide it out";
    };
  }

  /** What is still over a part: {@code 3 EX rocker} or {@code 3 EX rocker and 3 EX pushrod}. */
  static String names(Layout layout, List<PartRecord> over) {
    return over.stream()
        .map(part -> PartName.of(layout, part.part()).words())
        .collect(Collectors.joining(" and "));
  }

  /** What is still over a part that has come out, in a sentence; empty where nothing is. */
  static String too(EngineJob job, Place home) {
    List<PartRecord> over = new OffFirst(job).over(home);
    return over.isEmpty()
        ? BigPartStep.stillOn(new BigPartOrder(job, BagBook.of(job)), home)
        : "Scan the " + names(job.layout(), over) + " too.";
  }

  /** {@code 12 of 74 out}, and how many are fitted again. */
  static String progress(EngineJob job) {
    long inside = count(job, Whereabouts.IN_ENGINE);
    long fitted = count(job, Whereabouts.FITTED);
    int places = job.places().size();
    String out = places - inside - fitted + " of " + places + " out";
    return fitted == 0 ? out : out + ", " + fitted + " fitted";
  }

  private static long count(EngineJob job, Whereabouts where) {
    return job.parts().stream().filter(part -> part.where() == where).count();
  }

  /** Whether a part is out that is not the next, or has others over it. */
  static ScreenAnswer outOfTurn(
      Layout layout, PartRecord part, List<PartRecord> over, Optional<PartRecord> next) {
    String name = PartName.of(layout, part.part()).words();
    String other = next.map(one -> PartName.of(layout, one.part()).words()).orElse("");
    return over.isEmpty()
        ? ask(name + " is out?", "Next would be " + other + ".")
        : ask("First off: " + names(layout, over), "It is over the " + name + ". Are both out?");
  }

  /** A question that stands over all else. */
  static ScreenAnswer ask(String line, String small) {
    return ask("Not the next", line, small);
  }

  /** What a part that does not come out is answered with: where it is, and what brings it back. */
  static ScreenAnswer fittedOrLost(PartName name, Whereabouts where) {
    return where == Whereabouts.LOST
        ? ask("Lost", name.words(), "It is marked lost. On its page press It is found.")
        : ask("Fitted", name.words(), "It is fitted. On its page press Taken out again.");
  }

  private static ScreenAnswer ask(String headline, String line, String small) {
    return new ScreenAnswer(
        Optional.of(Cue.ASK), headline, List.of(line), small, Optional.empty(), Set.of());
  }
}
