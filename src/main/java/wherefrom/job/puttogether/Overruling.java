package wherefrom.job.puttogether;

import wherefrom.parts.Place;

/** A part is fitted against the stop that stands: with a reason, and never against some stops. */
final class Overruling {
  private final Judging judging;
  private final Prompts prompts;

  Overruling(Judging judging, Prompts prompts) {
    this.judging = judging;
    this.prompts = prompts;
  }

  /** Chooses a reason, and says what would come of it. */
  FitOutcome choose(String reason) {
    if (judging.hand().stop().isEmpty()) {
      return new FitOutcome.Said("Nothing is stopped.");
    }
    if (!judging.canFitOnPurpose()) {
      return new FitOutcome.Said(prompts.neverOnPurpose());
    }
    judging.chooseReason(reason);
    return new FitOutcome.Said(Prompts.reason(reason, judging.findUnmated()));
  }

  /** Fits the stopped part where it was stopped. */
  FitOutcome fit(String words) {
    if (!judging.hand().isStopped()) {
      return new FitOutcome.Said(Prompts.NO_PART);
    }
    if (!judging.canFitOnPurpose()) {
      return new FitOutcome.Said(prompts.neverOnPurpose());
    }
    Place place = judging.hand().place();
    String told = prompts.onPurpose(words, judging.findUnmated());
    judging.fitOnPurpose(words);
    return new FitOutcome.FittedOnPurpose(place, told);
  }
}
