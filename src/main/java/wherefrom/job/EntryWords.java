package wherefrom.job;

import java.util.List;
import java.util.stream.Collectors;
import wherefrom.engine.Spots;
import wherefrom.job.entry.Act;
import wherefrom.job.entry.BackFromShop;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.DecisionEntry;
import wherefrom.job.entry.DecisionMade;
import wherefrom.job.entry.DecisionsAsked;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.JobOpened;
import wherefrom.job.entry.KindsTracked;
import wherefrom.job.entry.LookRecorded;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartOut;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.PiecesCounted;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.entry.SectionClosed;
import wherefrom.job.entry.SentToShop;
import wherefrom.job.entry.SetDecided;
import wherefrom.job.entry.StartTicked;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TagReissued;
import wherefrom.job.entry.TagsPrinted;
import wherefrom.job.entry.TakenBack;
import wherefrom.parts.PartKind;
import wherefrom.text.Words;

/** What happened, in words, without a full stop: for the history and for taking back. */
public final class EntryWords {
  private static final EntryRows<EntryWords, String> JOB =
      EntryRows.<EntryWords, String>none()
          .on(JobOpened.class, (words, opened) -> opened(opened))
          .on(KindsTracked.class, (words, tracked) -> "tracked too: " + kinds(tracked))
          .on(Act.class, EntryWords::act)
          .on(TakenBack.class, (words, back) -> "step " + back.sequence() + " undone")
          .on(TagsPrinted.class, (words, printed) -> printed(printed))
          .on(PlaceExcused.class, EntryWords::excused)
          .on(SectionClosed.class, (words, closed) -> "section finished: " + closed.section())
          .on(StartTicked.class, (words, ticked) -> ticked(ticked))
          .on(DecisionsAsked.class, (words, asked) -> asked(asked))
          .on(StopGiven.class, EntryWords::stop)
          .on(SentToShop.class, (words, sent) -> sent(sent))
          .on(BackFromShop.class, (words, back) -> back(back));

  private static final EntryRows<EntryWords, String> PARTS =
      EntryRows.<EntryWords, String>none()
          .on(PartOut.class, (words, out) -> words.part(out.item()) + " came out")
          .on(PartFitted.class, EntryWords::fitted)
          .on(PartUnfitted.class, EntryWords::unfitted)
          .on(PartReplaced.class, EntryWords::replaced)
          .on(TagReissued.class, EntryWords::reissued)
          .on(PiecesCounted.class, EntryWords::counted)
          .on(PartLost.class, EntryWords::lost)
          .on(PartFound.class, (words, found) -> words.part(found.item()) + " found")
          .on(OffForWashing.class, EntryWords::off)
          .on(
              BackFromWashing.class,
              (words, back) -> words.part(back.item()) + " back from washing")
          .on(LookRecorded.class, EntryWords::looked)
          .on(DecisionMade.class, EntryWords::decided)
          .on(SetDecided.class, EntryWords::decided)
          .on(NoteAdded.class, EntryWords::note)
          .on(PhotoAdded.class, (words, photo) -> "photograph of " + words.subject(photo.item()))
          .on(CheckAnswered.class, (words, answered) -> new CheckWords(words.job).of(answered));

  private static final EntryTable<EntryWords, String> ALL =
      JOB.and(PARTS)
          .and(BenchWords.ROWS)
          .and(TorqueWords.ROWS)
          .and(BagWords.ROWS)
          .and(RunWords.ROWS)
          .whole();

  private final EngineJob job;

  private EntryWords(EngineJob job) {
    this.job = job;
  }

  public static String of(EngineJob job, JobEntry entry) {
    return ALL.of(new EntryWords(job), entry);
  }

  /** The job that is told of. */
  EngineJob job() {
    return job;
  }

  private static String opened(JobOpened opened) {
    return "job \"" + opened.name() + "\" opened, " + opened.layout().title();
  }

  private static String kinds(KindsTracked tracked) {
    return tracked.kinds().stream()
        .map(PartKind::plural)
        .sorted()
        .collect(Collectors.joining(", "));
  }

  private String act(Act act) {
    return act.entries().stream().map(each -> of(job, each)).collect(Collectors.joining("; "));
  }

  private static String printed(TagsPrinted printed) {
    return printed.items().size() + " " + printed.type().word() + " tags printed";
  }

  private String excused(PlaceExcused excused) {
    String how = job.findSeated(excused.place()).isPresent() ? " left as it is: " : " left empty: ";
    return excused.place().words() + how + excused.reason();
  }

  private static String ticked(StartTicked ticked) {
    return "before the first start, "
        + ticked.point()
        + (ticked.done() ? ": done" : ": open again")
        + behind(ticked.words());
  }

  private static String asked(DecisionsAsked asked) {
    return asked.everyPart()
        ? "a decision asked of every part"
        : "a decision asked only of parts in doubt";
  }

  private String stop(StopGiven stop) {
    return (stop.item() > 0 ? part(stop.item()) + ": " : "scan: ")
        + stop.word().word()
        + (stop.item() > 0 ? at(stop) : "");
  }

  private static String at(StopGiven stop) {
    return Spots.find(stop.spot()).map(spot -> ", at " + spot.brief()).orElse("");
  }

  private static String sent(SentToShop sent) {
    return items(sent.items()) + " to the machine shop, visit " + sent.visit();
  }

  private static String back(BackFromShop back) {
    return items(back.items())
        + " back from the machine shop, visit "
        + back.visit()
        + behind(back.done());
  }

  private String fitted(PartFitted fitted) {
    return part(fitted.item())
        + " fitted at "
        + fitted.place().words()
        + (fitted.untagged() ? " without a tag" : "")
        + (fitted.wasOnPurpose() ? " on purpose (" + fitted.onPurpose() + ")" : "");
  }

  private String unfitted(PartUnfitted out) {
    return part(out.item()) + " taken out again" + behind(out.reason());
  }

  private String lost(PartLost lost) {
    return part(lost.item()) + " lost" + behind(lost.note());
  }

  private String replaced(PartReplaced replaced) {
    return part(replaced.oldItem())
        + " replaced by new part "
        + Words.number(replaced.newItem())
        + NewSizes.words(replaced)
        + ": "
        + replaced.reason();
  }

  private String reissued(TagReissued reissued) {
    return "tag of "
        + part(reissued.item())
        + " printed again, issue "
        + reissued.issue()
        + behind(reissued.reason());
  }

  private String counted(PiecesCounted counted) {
    return part(counted.item()) + ": " + counted.pieces() + " pieces on one tag";
  }

  private String off(OffForWashing off) {
    return part(off.item()) + " off for washing, basket " + off.basket();
  }

  private String looked(LookRecorded look) {
    return part(look.item()) + ", " + BenchWords.look(look.check(), look.look());
  }

  private String decided(DecisionEntry made) {
    return parts(made.items()) + ": " + made.decision().word();
  }

  private String note(NoteAdded note) {
    return "note on " + subject(note.item()) + ": " + note.text();
  }

  private String subject(int item) {
    return item == 0 ? "the job" : part(item);
  }

  /** What a person said of it, behind what happened; empty where nothing was said. */
  static String behind(String said) {
    return said.isEmpty() ? "" : " (" + said + ")";
  }

  /** {@code 0012 cylinder 3, exhaust, pushrod}; the number alone when the part is gone again. */
  String part(int item) {
    return job.findPart(item)
        .map(record -> Words.number(item) + " " + record.part().words())
        .orElseGet(() -> Words.number(item));
  }

  /** The part; of several their kind, where they are of one kind. */
  private String parts(List<Integer> items) {
    if (items.size() == 1) {
      return part(items.get(0));
    }
    List<PartKind> kinds =
        items.stream()
            .flatMap(item -> job.findPart(item).stream())
            .map(record -> record.part().kind())
            .distinct()
            .toList();
    return kinds.size() == 1 ? items.size() + " " + kinds.get(0).plural() : items(items);
  }

  private static String items(List<Integer> items) {
    return Words.count(items.size(), "part");
  }
}
