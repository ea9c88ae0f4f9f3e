package wherefrom.ui.puttogether;

import java.util.Optional;
import wherefrom.job.OpenJob;
import wherefrom.job.StandingRule;
import wherefrom.job.handling.Handling;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.job.shop.MachineShop;
import wherefrom.parts.Part;
import wherefrom.rules.Verdict;

/** The stop that stands, and the deeds that lead out of it. */
final class StopModel {
  private final OpenJob job;
  private final PutTogether together;

  StopModel(OpenJob job, PutTogether together) {
    this.job = job;
    this.together = together;
  }

  /** Whether what stands in the way of the stop can be taken out. */
  boolean canTakeOut() {
    return isA(Verdict.FittedBut.class)
        || isA(Verdict.PlaceTaken.class)
        || isA(Verdict.AlreadyFitted.class);
  }

  /** Whether the stopped part sits in its place, and something stands against it there. */
  boolean isFittedBut() {
    return isA(Verdict.FittedBut.class);
  }

  private boolean isA(Class<? extends Verdict> kind) {
    return together.stop().filter(kind::isInstance).isPresent();
  }

  /** The deed that leads out of the stop; empty where only another scan does. */
  Optional<Cure> cure() {
    return together.stop().flatMap(Cure::of);
  }

  /** The part that the stop speaks of; empty where its tag stood for no part. */
  Optional<Part> part() {
    return together.stopped();
  }

  /** The check that the stop waits for, where it stands in the job. */
  Optional<StandingRule> check() {
    String key = together.stop().map(Cure::check).orElse("");
    return job.state().rules().all().stream()
        .filter(rule -> rule.isOpenCheck() && rule.consequence().key().equals(key))
        .findFirst();
  }

  /** The stopped part is in the hand: it is no longer away. */
  void isHere(Cure cure) {
    part().ifPresent(part -> isHere(cure, part.item()));
  }

  private void isHere(Cure cure, int item) {
    switch (cure) {
      case FOUND -> new Handling(job).found(item);
      case BACK -> new Handling(job).backFromWashing(item);
      case BACK_FROM_SHOP -> new MachineShop(job).backByScan(item, "");
      case DECIDE, CHECK, PAGE -> {}
    }
  }
}
