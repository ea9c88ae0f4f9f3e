package wherefrom.job.handling;

import java.util.EnumSet;
import java.util.Set;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.BackFromWashing;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.OffForWashing;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartLost;
import wherefrom.job.entry.PartReplaced;
import wherefrom.job.entry.PartUnfitted;
import wherefrom.job.entry.PhotoAdded;
import wherefrom.job.entry.PiecesCounted;
import wherefrom.job.entry.TagReissued;
import wherefrom.parts.TagCode;
import wherefrom.parts.Whereabouts;
import wherefrom.text.UsualWords;

/** What is done to a part between the two days: washed, mislaid, found, replaced, tagged anew. */
public final class Handling {
  /** Why a part is replaced. */
  public static final UsualWords REPLACE_REASONS =
      UsualWords.orOther("worn out", "broken", "lost", "must be new");

  /** Why a tag is printed anew. */
  public static final UsualWords REISSUE_REASONS =
      UsualWords.orOther("tag lost", "tag cannot be read", "tag torn");

  private final OpenJob job;

  public Handling(OpenJob job) {
    this.job = job;
  }

  /** Tag off, part into a basket: only a part that lies on the bench. */
  public HandlingOutcome offForWashing(int item, int basket) {
    if (basket < 1 || basket > TagCode.MOST_ITEM) {
      return new HandlingOutcome.Refused("Baskets are numbered from 1. Choose one.");
    }
    return require(
        item,
        EnumSet.of(Whereabouts.OUT),
        "Only a part that is out can go off for washing",
        new OffForWashing(item, basket));
  }

  /** The part is back, its tag on again. */
  public HandlingOutcome backFromWashing(int item) {
    return require(
        item,
        EnumSet.of(Whereabouts.WASHING),
        "Only a part that is off for washing can come back",
        new BackFromWashing(item));
  }

  public HandlingOutcome lost(int item, String note) {
    return require(
        item,
        EnumSet.of(Whereabouts.OUT, Whereabouts.WASHING, Whereabouts.AT_SHOP),
        "Only a part that is out of the engine can be lost",
        new PartLost(item, note.strip()));
  }

  public HandlingOutcome found(int item) {
    return require(
        item,
        EnumSet.of(Whereabouts.LOST),
        "The part is not recorded as lost",
        new PartFound(item));
  }

  /** A fitted part was taken out again by hand. */
  public HandlingOutcome tookOut(int item, String reason) {
    return require(
        item,
        EnumSet.of(Whereabouts.FITTED),
        "The part is not fitted",
        new PartUnfitted(item, reason.strip()));
  }

  /** A new part takes the place of this one; nobody says its size. */
  public HandlingOutcome replace(int item, String reason) {
    return replace(item, reason, NewPart.LIKE_THE_OLD);
  }

  /**
   * A new part takes the place of this one, which is retired.
   *
   * @return the new part, whose tag can be printed
   */
  public HandlingOutcome replace(int item, String reason, NewPart part) {
    return job.asOne(() -> replaceOnce(item, reason, part));
  }

  private HandlingOutcome replaceOnce(int item, String reason, NewPart part) {
    if (reason.isBlank()) {
      return new HandlingOutcome.Refused("Say why the part is replaced.");
    }
    int fresh = job.nextItem();
    if (fresh > TagCode.MOST_ITEM) {
      return new HandlingOutcome.Refused("All part numbers of this job are used up.");
    }
    return part.read(
        job.state(),
        job.state().getPart(item).part(),
        size -> replace(new PartReplaced(item, fresh, reason.strip(), size, part.partSort())),
        HandlingOutcome.Refused::new);
  }

  private HandlingOutcome replace(PartReplaced entry) {
    // Fitted on purpose all the same, it is replaced still.
    boolean replaced = job.state().bench().findReplacement(entry.oldItem()).isPresent();
    HandlingOutcome done =
        require(
            entry.oldItem(),
            replaced
                ? EnumSet.noneOf(Whereabouts.class)
                : EnumSet.complementOf(EnumSet.of(Whereabouts.RETIRED)),
            "The part is replaced already",
            entry);
    return done instanceof HandlingOutcome.Logged
        ? new HandlingOutcome.Logged(job.state().getPart(entry.newItem()))
        : done;
  }

  /** The part's tag is lost or spoilt: the next issue counts, the older ones are retired. */
  public HandlingOutcome reissue(int item, String reason) {
    return job.asOne(() -> reissueOnce(item, reason));
  }

  private HandlingOutcome reissueOnce(int item, String reason) {
    int issue = job.nextIssue(item);
    if (reason.isBlank()) {
      return new HandlingOutcome.Refused("Say why the tag is printed again.");
    }
    if (issue > TagCode.MOST_ISSUE) {
      return new HandlingOutcome.Refused("This tag was printed again too often. Replace the part.");
    }
    return require(
        item,
        EnumSet.complementOf(EnumSet.of(Whereabouts.RETIRED)),
        "The part is retired and needs no tag",
        new TagReissued(item, issue, reason.strip()));
  }

  /** How many small pieces hang on the part's one tag. */
  public HandlingOutcome pieces(int item, int count) {
    return count < 1 || count > 99
        ? new HandlingOutcome.Refused("1 to 99 pieces can hang on one tag.")
        : log(item, new PiecesCounted(item, count));
  }

  public HandlingOutcome note(int item, String text) {
    return text.isBlank()
        ? new HandlingOutcome.Refused("The note is empty.")
        : log(item, new NoteAdded(item, text.strip()));
  }

  /** A photograph that is kept in the job's folder already. */
  public HandlingOutcome photo(int item, String file, String caption) {
    return log(item, new PhotoAdded(item, file, caption.strip()));
  }

  private HandlingOutcome require(int item, Set<Whereabouts> wanted, String rule, JobEntry entry) {
    return job.asOne(() -> requireOnce(item, wanted, rule, entry));
  }

  private HandlingOutcome requireOnce(
      int item, Set<Whereabouts> wanted, String rule, JobEntry entry) {
    PartRecord part = job.state().getPart(item);
    return wanted.contains(part.where())
        ? log(item, entry)
        : new HandlingOutcome.Refused(
            rule + ". This one is " + part.where().words() + "." + found(part));
  }

  /** A lost part that someone holds is found. */
  private static String found(PartRecord part) {
    return part.where() == Whereabouts.LOST ? " If it is in your hand, say that it is found." : "";
  }

  private HandlingOutcome log(int item, JobEntry entry) {
    return job.asOne(() -> logOnce(item, entry));
  }

  private HandlingOutcome logOnce(int item, JobEntry entry) {
    job.record(entry);
    return new HandlingOutcome.Logged(job.state().getPart(item));
  }
}
