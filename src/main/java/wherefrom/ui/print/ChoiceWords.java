package wherefrom.ui.print;

import wherefrom.job.EngineJob;
import wherefrom.job.print.TagChoice;

/** What is to be printed, in words. */
final class ChoiceWords {
  private ChoiceWords() {}

  /** What a sheet holds, in a word or two. */
  static String fileKind(TagChoice choice) {
    if (choice instanceof TagChoice.Baskets) {
      return "basket tags";
    }
    if (choice instanceof TagChoice.PlaceCards) {
      return "place cards";
    }
    if (choice instanceof TagChoice.ActionCards) {
      return "action cards";
    }
    return choice instanceof TagChoice.ScannerSetUp ? "scanner card" : "tags";
  }

  static String of(EngineJob job, TagChoice choice) {
    if (choice instanceof TagChoice.OfKind kind) {
      return "tags of the " + kind.kind().plural();
    }
    if (choice instanceof TagChoice.OnePart one) {
      return job.findPart(one.item())
          .map(part -> "the tag of " + part.part().words())
          .orElse("one tag");
    }
    if (choice instanceof TagChoice.Baskets baskets) {
      return baskets.count() + " basket tags";
    }
    if (choice instanceof TagChoice.AllParts) {
      return "the tags of all parts";
    }
    if (choice instanceof TagChoice.PlaceCards) {
      return "place cards";
    }
    if (choice instanceof TagChoice.ActionCards) {
      return "action cards";
    }
    return choice instanceof TagChoice.ScannerSetUp
        ? "the scanner set-up card"
        : "tags not printed yet";
  }
}
