package wherefrom.ui.home;

import java.util.stream.Stream;
import wherefrom.job.PlaceState;
import wherefrom.job.shelf.JobDay;
import wherefrom.job.shelf.Standing;

/** How a job stands, in two words or three: day by day, and on the whole. */
public final class DayWords {
  private DayWords() {}

  /** What a day has open. */
  static String open(Standing standing, JobDay day) {
    int open = standing.open(day);
    if (open > 0 || standing.isDone(day)) {
      return open(day, open);
    }
    return day == JobDay.INSPECT && standing.open(JobDay.APART) == 0
        ? standing.unlooked() + " to look at"
        : "later";
  }

  private static String open(JobDay day, int open) {
    return switch (day) {
      case TAGS -> open == 0 ? "printed" : open + " to print";
      case APART -> open == 0 ? "all out" : open + " to go";
      case INSPECT -> open == 0 ? "none open" : open + " to decide";
      case TOGETHER -> open == 0 ? "all in" : open + " to fit";
      case RECORD -> open == 0 ? "all checked" : open + " to check";
    };
  }

  /** {@code 19 of 62 out} or {@code 28 of 103 fitted}: how far the present day is. */
  public static String sofar(Standing standing) {
    if (standing.inService()) {
      return standing.due() == 0 ? "in service" : "in service, " + standing.due() + " due";
    }
    int all = standing.places();
    return switch (standing.day()) {
      case TAGS -> standing.open(JobDay.TAGS) + " tags to print";
      case APART -> all - standing.open(JobDay.APART) + " of " + all + " out";
      case INSPECT -> standing.open(JobDay.INSPECT) + " to decide";
      case TOGETHER, RECORD -> fitted(standing) + " of " + all + " fitted";
    };
  }

  private static int fitted(Standing standing) {
    return Stream.of(PlaceState.values())
        .filter(PlaceState::isPutBack)
        .mapToInt(standing::count)
        .sum();
  }
}
