package wherefrom.ui.puttogether;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.JobPartNames;
import wherefrom.job.OpenJob;
import wherefrom.job.StandingRule;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.FitOutcome;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.puttogether.StopWords;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.Over;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.Belonging;
import wherefrom.rules.Verdict;
import wherefrom.rules.VerdictName;
import wherefrom.rules.VerdictWords;
import wherefrom.rules.WayOut;

/** The stop that stands, and the deeds that lead out of it. */
final class StopModel {
  private static final Set<VerdictName> ELSEWHERE =
      EnumSet.of(
          VerdictName.WRONG_PLACE,
          VerdictName.WRONG_HALF,
          VerdictName.WRONG_MATE,
          VerdictName.WRONG_KIND);

  private final OpenJob job;
  private final PutTogether together;

  StopModel(OpenJob job, PutTogether together) {
    this.job = job;
    this.together = together;
  }

  /** How many stops wait that do not stand here. */
  int waiting() {
    return together.waiting();
  }

  /** Whether the stop can be overruled: never by a part of another kind, or by none. */
  boolean canFitOnPurpose() {
    return together.canFitOnPurpose();
  }

  /** Whether what stands in the way of the stop can be taken out. */
  boolean canTakeOut() {
    return together.stop().flatMap(Verdict::findInTheWay).isPresent();
  }

  /** Whether the stopped part sits in its place, and something stands against it there. */
  boolean isFittedBut() {
    return is(Verdict.FittedBut.class);
  }

  /** Whether another part sits where the stopped one was to go. */
  boolean isPlaceTaken() {
    return is(Verdict.PlaceTaken.class);
  }

  /** By the verdict itself: of one that is settled since only the name is left. */
  private boolean is(Class<? extends Verdict> kind) {
    return together.stop().filter(kind::isInstance).isPresent();
  }

  /** All that the stop says. */
  Optional<VerdictWords> words() {
    return together.stop().map(stop -> stop.words(new JobPartNames(job.state())));
  }

  /** Something was done about the stop on another screen: the same scan is judged again. */
  static FitOutcome again(PutTogether together) {
    return together.after(() -> {});
  }

  /** What leads out of the stop first. */
  WayOut first() {
    return words().map(VerdictWords::first).orElse(WayOut.SCAN_RIGHT_PART);
  }

  /** The part that the stop speaks of; empty where its tag stood for no part. */
  Optional<Part> part() {
    return together.stopped();
  }

  /** The place that the stopped part was to go into, where it would be the right one. */
  Optional<Place> place() {
    return together
        .stop()
        .filter(Verdict.NotCleared.class::isInstance)
        .map(stop -> ((Verdict.NotCleared) stop).place());
  }

  /** Where a part that is in the wrong place belongs, where it could go in there now. */
  Optional<Place> ownPlace() {
    return together
        .stop()
        .filter(stop -> ELSEWHERE.contains(stop.name()))
        .flatMap(stop -> part())
        .filter(part -> new Fitting(job).findAgainst(part).isEmpty())
        .map(part -> Belonging.of(job.state().bench(), part).place());
  }

  /** The check that the stop waits for, where it stands in the job. */
  Optional<StandingRule> check() {
    return together
        .stop()
        .map(Verdict::openCheck)
        .flatMap(key -> job.state().rules().findOpenCheck(key));
  }

  /** Why a new part comes in place of the stopped one; empty where the stop says nothing of it. */
  Optional<String> whyNew() {
    return together.stop().flatMap(stop -> StopWords.newPart(job.state(), stop));
  }

  /** The stopped part is in the hand: it is no longer away. */
  void isHere(WayOut deed) {
    part().ifPresent(part -> isHere(deed, part.item()));
  }

  /** The record is put right: whoever held a part under the cap had the cap off. */
  private void capWasOff(Verdict stop) {
    if (stop instanceof Verdict.NotCleared held) {
      Over.findCap(held.place())
          .flatMap(job.state()::findFitted)
          .ifPresent(cap -> new Handling(job).tookOut(cap.item(), "it was off"));
    }
  }

  private void isHere(WayOut deed, int item) {
    switch (deed) {
      case FOUND -> new Handling(job).found(item);
      case BACK_FROM_WASHING -> new Handling(job).backFromWashing(item);
      case BACK_FROM_SHOP -> new MachineShop(job).backByScan(item, "");
      case CAP_WAS_OFF -> together.stop().ifPresent(this::capWasOff);
      default -> throw new IllegalArgumentException("brings nothing back: " + deed);
    }
  }
}
