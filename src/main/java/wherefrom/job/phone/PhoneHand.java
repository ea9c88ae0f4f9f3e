package wherefrom.job.phone;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.inspection.Subject;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.photos.PhotoFolder;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.shelf.Resume;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.JobNames;
import wherefrom.job.takeapart.OutOrder;
import wherefrom.rules.CodeVerdict;
import wherefrom.rules.Cue;

/** What is worked on at a phone, and what its keys and scans do there. */
final class PhoneHand {
  private static final String MORE_LIGHT = "Closer, tilted, with more light. Or type the code.";

  private final OpenJob job;
  private final PhoneCodes codes;
  private final PhoneApart apart;
  private final PhoneTogether together;

  /** The last entry before the phone joined: UNDO takes back nothing from before. */
  private final long joined;

  private PhoneWork work;
  private Optional<Subject> shown = Optional.empty();

  PhoneHand(OpenJob job, JobNames names, Supplier<OutOrder> order) {
    this.job = job;
    this.codes = new PhoneCodes(job, names);
    this.apart = new PhoneApart(job, order);
    this.together = new PhoneTogether(job);
    this.joined = job.sequence();
    this.work = first(job);
  }

  private static PhoneWork first(OpenJob job) {
    Resume at = Resume.of(job);
    return at.fitted() == 0 && at.inEngine() > 0 ? PhoneWork.TAKE_APART : PhoneWork.PUT_TOGETHER;
  }

  PhoneWork work() {
    return work;
  }

  PhoneCodes codes() {
    return codes;
  }

  /** What was scanned last. */
  Optional<Subject> subject() {
    return shown;
  }

  boolean isTogether() {
    return !isApart();
  }

  /** Whether a stop stands here and is to be seen. */
  boolean showsStop() {
    return together.isStopped() && !isApart();
  }

  /** Whether what was told last is so yet. */
  boolean isSo() {
    return together.isSo();
  }

  /** Does what a key says. */
  PhoneView act(PhoneDeed deed, String with) {
    return withStop(done(deed, with));
  }

  /** What is asked while a stop stands is asked under the stop: it stays to be seen and heard. */
  private PhoneView withStop(PhoneView asked) {
    return showsStop() && !asked.choices().isEmpty() ? asked.withCue(Cue.STOP) : asked;
  }

  private PhoneView done(PhoneDeed deed, String with) {
    return switch (deed) {
      case CODE -> scan(with);
      case DUE -> due();
      case UNDO -> undo();
      case WORK -> choose(with);
      case SKIP -> skip(with);
      case OUT -> apart.out(codes.part(with).part());
      case ALL_OUT -> apart.allOut(codes.parts(with));
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

  /** What is due. */
  PhoneView due() {
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
    apart.skip(codes.part(with).part().item());
    return apart.due();
  }

  private PhoneView scan(String text) {
    CodeLookup found = codes.find(text);
    PhotoFolder.subject(found).ifPresent(one -> shown = Optional.of(one));
    if (found instanceof CodeLookup.Refused refused
        && refused.verdict() instanceof CodeVerdict.AlsoFits also) {
      return PhoneCodes.which(also);
    }
    if (PhoneCodes.isTyped(text)
        && found instanceof CodeLookup.APart one
        && together.shows(one.part().part())) {
      return codes.copied(one);
    }
    return isApart() ? apart.scan(found) : together.scan(found);
  }

  /**
   * A picture was read.
   *
   * @param seen what is on it, each code once
   * @param hint what would help where nothing was read; may be empty
   */
  PhoneView read(List<String> seen, String hint) {
    if (seen.isEmpty()) {
      String small = hint.isEmpty() ? MORE_LIGHT : hint + " Or type the code.";
      return showsStop() ? due().saying("Not read. " + small) : notRead(small);
    }
    return withStop(seen.size() == 1 ? scan(seen.get(0)) : codes.several(seen, isApart()));
  }

  private static PhoneView notRead(String small) {
    return PhoneView.said("No tag was read", small).withCue(Cue.ASK);
  }

  /** A picture that was read and did something, unheard. */
  PhoneView wasRead(List<String> seen, LoggedEntry written) {
    return seen.size() == 1 ? wasScanned(seen.get(0), written) : itIsDone();
  }

  /** An act that was written unheard; only what is left of it is done. */
  PhoneView wasDone(PhoneDeed deed, String with, LoggedEntry written) {
    if (deed == PhoneDeed.CODE) {
      return wasScanned(with, written);
    }
    if (isStop(written)) {
      return itIsDone();
    }
    return switch (deed) {
      case TURNED -> together.turned();
      case TAKE_OUT -> written.sequence() < job.sequence() ? itIsDone() : together.tookOut();
      default -> itIsDone();
    };
  }

  private PhoneView itIsDone() {
    return due().saying("It is done.");
  }

  private static boolean isStop(LoggedEntry written) {
    return written.each().anyMatch(one -> one.entry() instanceof StopGiven);
  }

  /**
   * A scan that was written unheard is judged again for its words: a stop without a second entry,
   * and not where others have gone on from there.
   */
  private PhoneView wasScanned(String text, LoggedEntry written) {
    if (written.sequence() < job.sequence()) {
      work.mode().ifPresent(together::choose);
      return itIsDone();
    }
    return isStop(written) ? job.asOne(() -> scan(text), any -> false) : scan(text);
  }
}
