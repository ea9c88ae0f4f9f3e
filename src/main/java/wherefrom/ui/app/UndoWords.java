package wherefrom.ui.app;

import java.util.Optional;
import wherefrom.drawing.PlaceWords;
import wherefrom.engine.Layout;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryItems;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.PartFitted;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.text.Words;

/** A step in few words, for the key that takes it back: {@code 3 EX pushrod came out}. */
public final class UndoWords {
  private static final String NOTHING = "nothing to take back";

  private UndoWords() {}

  /** The step that is taken back next. */
  public static String next(OpenJob job) {
    return of(job.state(), job.findLastStep());
  }

  /** Parts and places by their names on the glass. */
  public static String of(EngineJob job, Optional<LoggedEntry> step) {
    return step.map(LoggedEntry::entry).map(entry -> of(job, entry)).orElse(NOTHING);
  }

  private static String of(EngineJob job, JobEntry entry) {
    String words = EntryWords.of(job, entry);
    for (int item : EntryItems.of(entry)) {
      String whole = words;
      words =
          job.findPart(item)
              .map(PartRecord::part)
              .map(part -> shorter(job.layout(), whole, part))
              .orElse(words);
    }
    return entry instanceof PartFitted fitted ? shorter(words, fitted.place()) : words;
  }

  private static String shorter(Layout layout, String words, Part part) {
    String number = Words.number(part.item()) + " ";
    String name = PlaceWords.named(layout, part.home());
    return words.replace(number + part.words(), name);
  }

  private static String shorter(String words, Place place) {
    return words.replace("at " + place.words(), "at " + place.brief());
  }
}
