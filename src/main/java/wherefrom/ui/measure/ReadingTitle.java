package wherefrom.ui.measure;

import java.util.Locale;
import java.util.stream.Stream;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.inspection.measure.Station;
import wherefrom.job.EngineJob;
import wherefrom.text.Words;
import wherefrom.ui.subject.Named;

/** What is measured and what is read of it, without saying a word twice. */
final class ReadingTitle {
  /** So many letters of the largest have room above a pad on any glass. */
  private static final int MOST = 46;

  private ReadingTitle() {}

  /**
   * @param named the subject's name
   * @param title of the plan, in small letters
   */
  static String of(String named, String title) {
    if (named.toLowerCase(Locale.ROOT).contains(title)) {
      return named;
    }
    return named + ": " + title;
  }

  /** {@code 3 EX piston to valve}, {@code Cylinder 8: dry}, {@code Oil pressure, hot, idle}. */
  static String brief(EngineJob job, Subject subject, ReadingPlan plan) {
    String title =
        plan.title().toLowerCase(Locale.ROOT).replaceFirst(", (by degrees|six lines)$", "");
    String name = Named.title(job, subject);
    if (!(subject instanceof Subject.AFeature at)) {
      return ofPart(name, title);
    }
    return switch (at.feature().reach()) {
      case WHOLE -> Words.capital(title);
      case VALVE, BANK -> Words.capital(Named.place(job, subject)) + " " + title;
      default ->
          of(
              name,
              at.feature() == Feature.COMPRESSION ? title.replace("compression, ", "") : title);
    };
  }

  /** Where the title begins with the part's word, the name goes on with it. */
  private static String ofPart(String name, String title) {
    String last = name.substring(name.lastIndexOf(' ') + 1);
    return title.startsWith(last + " ")
        ? name + title.substring(last.length())
        : of(name, title.replace(" " + last + " ", " "));
  }

  /**
   * Whose it is, and then the spot to read, for the largest letters. A spot that has no room is
   * left out where it is the only one; it is to be read elsewhere then.
   */
  static String atSpot(EngineJob job, Subject subject, ReadingPlan plan, Station station) {
    String brief = brief(job, subject, plan);
    String spot = spot(station);
    String whole = join(brief, spot);
    if (plan.stations().size() == 1) {
      return whole.length() <= MOST ? whole : brief;
    }
    return Stream.of(whole, join(Named.title(job, subject), spot))
        .filter(title -> title.length() <= MOST)
        .findFirst()
        .orElse(whole);
  }

  private static String join(String whose, String spot) {
    return whose + (whose.contains(": ") ? ", " : ": ") + Words.small(spot);
  }

  /** Where to read, without how; the dead centers as cam cards write them. */
  static String spot(Station station) {
    return station
        .words()
        .replaceFirst("(: |; |, such as ).*$", "")
        .replace("after top dead center", "ATDC")
        .replace("before top dead center", "BTDC")
        .replace("top dead center", "TDC");
  }
}
