package wherefrom.job.phone;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.inspection.Subject;
import wherefrom.job.EngineJob;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.photos.PhotoFolder;
import wherefrom.job.photos.Photograph;
import wherefrom.job.photos.Photographing;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.shelf.Resume;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tags.TagBook;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.parts.TagCode;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Cue;
import wherefrom.text.Words;

/**
 * A phone as a bench of its own: what is in the hand there, and the stop that stands there. Used by
 * one thread at a time.
 */
public final class PhoneBench implements AutoCloseable {
  private static final int TYPED = 6;
  private static final String MORE_LIGHT = "Closer, tilted, with more light. Or type the code.";

  private final OpenJob job;
  private final JobNames names;
  private final PhoneApart apart;
  private final PhoneTogether together;

  /** The last entry before the phone joined: UNDO takes back nothing from before. */
  private final long joined;

  private PhoneWork work;
  private PhoneView view;
  private Optional<Subject> shown = Optional.empty();

  /**
   * @param job open at a bench that is this phone's alone
   * @param names of the other jobs
   * @param order in which parts are proposed to come out
   */
  public PhoneBench(OpenJob job, JobNames names, Supplier<OutOrder> order) {
    this.job = job;
    this.names = names;
    this.apart = new PhoneApart(job, order);
    this.together = new PhoneTogether(job);
    this.joined = job.sequence();
    this.work = first(job);
    this.view = due();
  }

  private static PhoneWork first(OpenJob job) {
    Resume at = Resume.of(job);
    return at.fitted() == 0 && at.inEngine() > 0 ? PhoneWork.TAKE_APART : PhoneWork.PUT_TOGETHER;
  }

  /** What stands on the phone. */
  public PhoneView view() {
    return view;
  }

  public PhoneWork work() {
    return work;
  }

  public EngineJob state() {
    return job.state();
  }

  /** What a photograph that is taken now shows: what was scanned last. */
  public Optional<Subject> subject() {
    return shown;
  }

  /**
   * The same in words: {@code pushrod from cylinder 3, exhaust}; empty where nothing was scanned.
   */
  public String subjectWords() {
    return shown.map(of -> Photograph.words(state(), Optional.of(of))).orElse("");
  }

  /** Every tag that can be in view. */
  public List<TagCode> issued() {
    return new TagBook(state(), names).issued();
  }

  /**
   * Does what a key says.
   *
   * @param with what the key is about; empty where it is about nothing
   * @return what then stands on the phone
   * @throws IllegalArgumentException with a sentence when it cannot be about that
   * @throws wherefrom.job.LogbookException when it could not be written; nothing was done then, or
   *     the store is out of reach, and the same act sent again finds out
   */
  public PhoneView act(PhoneDeed deed, String with) {
    boolean kept = job.isUnsettled() && job.settle().isPresent();
    job.catchUp();
    // A code that is judged again says what stands now; all else must not be done twice.
    view = kept && deed != PhoneDeed.CODE ? due().saying("It is done.") : done(deed, with);
    return view;
  }

  private PhoneView done(PhoneDeed deed, String with) {
    return switch (deed) {
      case CODE -> scan(with);
      case DUE -> due();
      case UNDO -> undo();
      case WORK -> choose(with);
      case SKIP -> skip(with);
      case OUT -> apart.out(part(with).part());
      case ALL_OUT -> apart.allOut(parts(with));
      case TURNED -> together.turned();
      case TAKE_OUT -> together.tookOut();
      case PUT_AWAY -> together.putAway();
      case OTHER_PLACE -> together.otherPlace();
      case ON_PURPOSE -> together.askWhy();
      case REASON -> together.reason(Fitting.requireReason(with));
      case FIT -> together.fit(Fitting.requireReason(with));
      case PHOTOGRAPH, TYPE, KEEP ->
          throw new IllegalArgumentException("That is for the phone itself.");
    };
  }

  private PhoneView undo() {
    Optional<LoggedEntry> next = isApart() ? job.findLastStep() : together.findUndone();
    boolean before = next.filter(step -> step.sequence() <= joined).isPresent();
    if (before && (isApart() || !together.isStopped())) {
      return due().saying("This phone has nothing left to undo.");
    }
    return isApart() ? apart.undo() : together.undo();
  }

  private boolean isApart() {
    return work == PhoneWork.TAKE_APART;
  }

  private PhoneView due() {
    return isApart() ? apart.due() : together.due();
  }

  /** A stop that stands leads back to where it was given. */
  private PhoneView choose(String key) {
    PhoneWork chosen =
        PhoneWork.find(key)
            .orElseThrow(() -> new IllegalArgumentException("There is no such work."));
    if (chosen == PhoneWork.TAKE_APART && together.isStopped()) {
      return together.due().saying("Solve the stop first.");
    }
    work = chosen;
    return chosen.mode().map(together::choose).orElseGet(apart::due);
  }

  private PhoneView skip(String with) {
    if (!isApart()) {
      return together.skip();
    }
    apart.skip(part(with).part().item());
    return apart.due();
  }

  private PartRecord part(String item) {
    return Optional.of(item)
        .filter(digits -> digits.matches("[0-9]{1,4}"))
        .map(Integer::valueOf)
        .flatMap(state()::findPart)
        .orElseThrow(() -> new IllegalArgumentException("This job has no such part."));
  }

  private List<PartRecord> parts(String codes) {
    List<PartRecord> parts = new ArrayList<>();
    for (String code : Arrays.asList(codes.split(" "))) {
      if (find(code) instanceof CodeLookup.APart one) {
        parts.add(one.part());
      }
    }
    return parts;
  }

  private CodeLookup find(String text) {
    return new TagBook(state(), names).find(text);
  }

  private PhoneView scan(String text) {
    CodeLookup found = find(text);
    PhotoFolder.subject(found).ifPresent(one -> shown = Optional.of(one));
    boolean typed = text.replaceAll("\\s", "").length() == TYPED;
    if (found instanceof CodeLookup.Refused refused
        && refused.verdict() instanceof CodeVerdict.AlsoFits also) {
      return which(also);
    }
    if (typed && found instanceof CodeLookup.APart one && together.shows(one.part().part())) {
      return copied(one);
    }
    return isApart() ? apart.scan(found) : together.scan(found);
  }

  /** Six digits that may be another tag's: the person says whose. */
  private static PhoneView which(CodeVerdict.AlsoFits also) {
    Map<String, String> means = new LinkedHashMap<>(also.here());
    means.putAll(also.near());
    List<PhoneKey> choices = new ArrayList<>();
    means.forEach(
        (digits, words) ->
            choices.add(new PhoneKey(PhoneDeed.CODE, digits, Words.capital(words), "")));
    choices.add(new PhoneKey(PhoneDeed.DUE, "", "Not sure", "photograph the tag"));
    return PhoneView.choice(also.sentence(), choices);
  }

  /** A code that the stop shows: it may be copied from there. */
  private PhoneView copied(CodeLookup.APart one) {
    String digits = one.part().part().code(state().engine()).digits();
    return PhoneView.choice(
        "Is this tag on the part in your hand?",
        List.of(
            new PhoneKey(PhoneDeed.CODE, digits, "Yes", "and the other is out of there"),
            new PhoneKey(PhoneDeed.DUE, "", "No", "it was copied from the stop")));
  }

  /**
   * A picture was read.
   *
   * @param codes what is on it, each once
   * @param hint what would help where nothing was read; may be empty
   */
  public PhoneView read(List<String> codes, String hint) {
    if (codes.isEmpty()) {
      String small = hint.isEmpty() ? MORE_LIGHT : hint + " Or type the code.";
      PhoneView now = due();
      view = together.isStopped() && !isApart() ? now.saying("Not read. " + small) : notRead(small);
      return view;
    }
    view = codes.size() == 1 ? scan(codes.get(0)) : several(codes);
    return view;
  }

  private static PhoneView notRead(String small) {
    return PhoneView.said("No tag was read", small).withCue(Cue.ASK);
  }

  private PhoneView several(List<String> codes) {
    List<PhoneKey> choices = new ArrayList<>();
    if (isApart() && codes.stream().allMatch(code -> find(code) instanceof CodeLookup.APart)) {
      String all = "All " + codes.size() + " are out";
      choices.add(new PhoneKey(PhoneDeed.ALL_OUT, String.join(" ", codes), all, ""));
    }
    codes.forEach(
        code -> choices.add(new PhoneKey(PhoneDeed.CODE, code, Words.capital(meaning(code)), "")));
    choices.add(PhoneKey.of(PhoneDeed.DUE, "None of them"));
    return PhoneView.choice(codes.size() + " tags: which one?", choices);
  }

  private String meaning(String code) {
    CodeLookup found = find(code);
    return found instanceof CodeLookup.Refused ? code : found.words();
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

  /** A picture that lies in the job's folder is filed with what it shows. */
  public PhoneView keep(Subject subject, String file) {
    new Photographing(job).add(Optional.of(subject), "", file, "");
    view = due().saying("Kept with the " + Photograph.words(state(), Optional.of(subject)) + ".");
    return view;
  }

  /** The job has changed at another bench: what is due may be something else. */
  public PhoneView refresh() {
    job.catchUp();
    boolean waits = view.cue().isEmpty() && view.choices().isEmpty();
    boolean stopped = view.cue().filter(Cue.STOP::equals).isPresent() && !isApart();
    if (waits || stopped || !together.isSo()) {
      view = due();
    }
    return view;
  }

  /** Lets go of the bench; what was done at it stays. */
  @Override
  public void close() {
    job.close();
  }
}
