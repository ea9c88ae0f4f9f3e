package wherefrom.ui.subject;

import wherefrom.drawing.PlaceWords;
import wherefrom.engine.Spot;
import wherefrom.inspection.Feature;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.bags.BagBook;
import wherefrom.text.Words;

/** What a subject is called on the screen. */
public final class Named {
  private Named() {}

  /** {@code 3 EX pushrod}, {@code Main journal 2}. */
  public static String title(EngineJob job, Subject subject) {
    return subject.match(
        tagged -> Words.capital(PlaceWords.named(job.layout(), job.getPart(tagged.item()).part())),
        Named::title,
        beside -> Words.capital(BagBook.of(job).words(beside)));
  }

  private static String title(Subject.AFeature at) {
    return switch (at.feature().reach()) {
      case VALVE -> place(at) + " " + at.feature().word();
      case WHOLE -> Words.capital(at.feature().word());
      // What is read through a plug hole is read of the cylinder.
      case CYLINDER ->
          (at.feature() == Feature.COMPRESSION ? "Cylinder" : Words.capital(at.feature().word()))
              + " "
              + place(at);
      default -> Words.capital(at.feature().word()) + " " + place(at);
    };
  }

  /** The place alone: {@code 3 EX}, {@code 2}, {@code left}. */
  public static String place(EngineJob job, Subject subject) {
    return subject.match(
        tagged -> job.getPart(tagged.item()).part().home().brief(), Named::place, beside -> "");
  }

  private static String place(Subject.AFeature at) {
    return switch (at.feature().reach()) {
      case VALVE -> at.site().findSpot().map(Spot::figures).orElse(at.where());
      case CYLINDER, MAIN, CAM_BEARING -> "" + at.number();
      case BANK -> at.where();
      case WHOLE -> at.feature().word();
    };
  }
}
