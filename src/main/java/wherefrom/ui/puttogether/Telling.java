package wherefrom.ui.puttogether;

import java.util.Optional;
import java.util.function.Supplier;
import wherefrom.job.OpenJob;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.ui.controls.ScreenAnswer;

/** What the screen for putting together said last, and what has come before it since. */
final class Telling {
  private final OpenJob job;
  private final Supplier<ScreenAnswer> due;
  private final ScreenAnswer start;
  private ToldFit told;
  private Optional<ToldFit> beforeAsk = Optional.empty();

  /** When the newest stop was given that waited as this was said; 0 where none did. */
  private long lastStop;

  /**
   * @param due what is to be done now, as it would stand on the screen by itself
   * @param start what is said first
   */
  Telling(OpenJob job, Supplier<ScreenAnswer> due, ScreenAnswer start) {
    this.job = job;
    this.due = due;
    this.start = start;
    told = ToldFit.words(start);
    lastStop = job.stops().waitingSince();
  }

  /** Says something that speaks of no fit. */
  void say(ScreenAnswer answer) {
    tell(ToldFit.words(answer));
  }

  /** Says what came of a step, with the fit that it was, beside what is due where that stays. */
  void say(FitOutcome step, ScreenAnswer answer, FitMode mode) {
    boolean stays = Answers.leavesDue(step, mode);
    ScreenAnswer beside = answer.saying(Answers.inLine(step, answer));
    ScreenAnswer said = stays ? Answers.beside(beside, due.get()) : answer;
    boolean back = step instanceof FitOutcome.TookBack && !stays;
    String next = back ? (said.small() + " " + due.get().small()).strip() : said.small();
    tell(ToldFit.of(job.state(), step, said.saying(next)));
  }

  private void tell(ToldFit now) {
    told = now;
    lastStop = job.stops().waitingSince();
  }

  /** What was said last, whether it is so yet or not. */
  ScreenAnswer last() {
    return told.answer();
  }

  /** Whether nothing was said yet but what stood as the screen came up, and that says something. */
  boolean isAtStart() {
    return last().equals(start) && !start.headline().isEmpty();
  }

  /** What was said last, unless it is so no more: then what is due now. */
  ToldFit standing() {
    return told.isSo(job.state()) ? told : ToldFit.words(due.get());
  }

  /** Whether a stop was given elsewhere since this was said: it comes before all that was. */
  boolean isStoppedSince() {
    return job.stops().waitingSince() > lastStop;
  }

  /** The camera asks: what was said of another part must not come back as the answer to it. */
  void ask(String hint) {
    beforeAsk = beforeAsk.or(() -> Optional.of(ToldFit.words(due.get())));
    say(Answers.asking(hint, due.get()));
  }

  /** What waited comes back once the camera asks no more. */
  void asksNoMore() {
    beforeAsk.ifPresent(this::tell);
    beforeAsk = Optional.empty();
  }
}
