package wherefrom.job.phone;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.job.tags.JobNames;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.TagCode;
import wherefrom.rules.Cue;

/**
 * A phone as a bench of its own: what is in the hand there, and the stop that stands there. Used by
 * one thread at a time.
 */
public final class PhoneBench implements AutoCloseable {
  private final OpenJob job;
  private final PhoneHand hand;
  private final LostActs lost;
  private PhoneView view;

  /**
   * @param job open at a bench that is this phone's alone
   * @param names of the other jobs
   * @param order in which parts are proposed to come out
   */
  public PhoneBench(OpenJob job, JobNames names, Supplier<OutOrder> order) {
    this.job = job;
    this.hand = new PhoneHand(job, names, order);
    this.lost = new LostActs(job);
    this.view = hand.due();
  }

  /** What stands on the phone. */
  public PhoneView view() {
    return view;
  }

  public PhoneWork work() {
    return hand.work();
  }

  public EngineJob state() {
    return job.state();
  }

  /** What a photograph that is taken now shows: what was scanned last. */
  public Optional<Subject> subject() {
    return hand.subject();
  }

  /**
   * The same in words: {@code pushrod from cylinder 3, exhaust}; empty where nothing was scanned.
   */
  public String subjectWords() {
    return hand.subject().map(of -> Photograph.words(state(), Optional.of(of))).orElse("");
  }

  /** Every tag that can be in view. */
  public List<TagCode> issued() {
    return hand.codes().issued();
  }

  /** Every tag that the other jobs of the shelf printed; may be asked for on any thread. */
  public Supplier<List<TagCode>> printedElsewhere() {
    return hand.codes().printedElsewhere();
  }

  /**
   * Does what a key says.
   *
   * @param act its id: the same however often the phone sends it, so that it is done once
   * @param with what the key is about; empty where it is about nothing
   * @return what then stands on the phone
   * @throws IllegalArgumentException with a sentence when it cannot be about that
   * @throws wherefrom.job.LogbookException when it could not be written; nothing was done then, or
   *     the store is out of reach, and the same act sent again finds out
   */
  public PhoneView act(String act, PhoneDeed deed, String with) {
    return once(act, () -> hand.act(deed, with), written -> hand.wasDone(deed, with, written));
  }

  private PhoneView once(
      String act, Supplier<PhoneView> deed, Function<LoggedEntry, PhoneView> wasDone) {
    Optional<LoggedEntry> written = lost.settle(act);
    job.catchUp();
    PhoneView now =
        lost.watched(act, () -> written.isPresent() ? wasDone.apply(written.get()) : deed.get());
    view = lost.takeUntold().map(other -> now.then(kept(other))).orElse(now);
    return view;
  }

  private String kept(LoggedEntry other) {
    return "Kept after all: " + EntryWords.of(state(), other.entry()) + ".";
  }

  /**
   * A picture was read.
   *
   * @param act the id of the act that sent it
   * @param seen what is on it, each code once
   * @param hint what would help where nothing was read; may be empty
   */
  public PhoneView read(String act, List<String> seen, String hint) {
    return once(act, () -> hand.read(seen, hint), written -> hand.wasRead(seen, written));
  }

  /**
   * Whether a picture of this can be kept; to be asked before it is put into the job's folder.
   *
   * @throws IllegalArgumentException with a sentence when the job has no such thing
   */
  public Subject require(String key) {
    Subject subject =
        Subject.find(key).orElseThrow(() -> new IllegalArgumentException("Scan its tag first."));
    new Photographing(job).require(Optional.of(subject));
    return subject;
  }

  /**
   * A picture that lies in the job's folder is filed with what it shows.
   *
   * @param act the id of the act that sent it
   */
  public PhoneView keep(String act, Subject subject, String file) {
    return once(
        act,
        () -> {
          new Photographing(job).add(Optional.of(subject), "", file, "");
          return keptWith(subject);
        },
        written -> keptWith(subject));
  }

  private PhoneView keptWith(Subject subject) {
    return hand.due()
        .saying("Kept with the " + Photograph.words(state(), Optional.of(subject)) + ".");
  }

  /**
   * The job has changed at another bench: what is due may be something else. Where its logbook
   * turned out to be damaged since, that is told before anything else is done.
   */
  public PhoneView refresh() {
    job.catchUp();
    boolean asks = !view.choices().isEmpty();
    boolean waits = view.cue().isEmpty() && !asks;
    boolean stopped = view.cue().filter(Cue.STOP::equals).isPresent() && hand.isTogether() && !asks;
    if (!job.condition().writable()) {
      view = readOnly();
    } else if (waits || stopped || !hand.isSo()) {
      view = hand.due();
    }
    return view;
  }

  private PhoneView readOnly() {
    String why = job.condition().sentence();
    return hand.showsStop()
        ? hand.due().saying(why)
        : PhoneView.said("Nothing can be written", why).withCue(Cue.ASK).without();
  }

  /** Lets go of the bench; what was done at it stays. */
  @Override
  public void close() {
    job.close();
  }
}
