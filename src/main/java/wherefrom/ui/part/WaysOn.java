package wherefrom.ui.part;

import java.util.List;
import java.util.Optional;
import wherefrom.job.JobPartNames;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.StandingRule;
import wherefrom.job.puttogether.Fitting;
import wherefrom.job.puttogether.StopWords;
import wherefrom.rules.Verdict;

/**
 * The one thing to do with a part as it is, where that is neither to put it back nor to decide for
 * the first time: what brings it back, takes it out, or clears it.
 *
 * @param goesBack whether it lies on the bench of a job that is being put together
 */
record WaysOn(OpenJob job, PartRecord record, boolean goesBack) {

  Optional<WayOn> find() {
    return switch (record.where()) {
      case WASHING -> way(Deed.BACK, "It is back", "from washing");
      case AT_SHOP -> way(Deed.BACK_FROM_SHOP, "It is back", "from the machine shop");
      case LOST -> way(Deed.FOUND, "It is found", "I have it in my hand");
      case FITTED ->
          clears().or(() -> way(Deed.TOOK_OUT, "Taken out again", "I have it in my hand"));
      case OUT -> clears().filter(on -> goesBack || !isForDecision(on));
      case IN_ENGINE, RETIRED -> Optional.empty();
    };
  }

  /**
   * Before a used part goes back its decision comes first, with what is proposed; an open check
   * comes before that.
   */
  private boolean isForDecision(WayOn on) {
    return on.deed() != Deed.CHECK && record.decision().isEmpty() && !record.part().fresh();
  }

  private static Optional<WayOn> way(Deed deed, String words, String more) {
    return Optional.of(new WayOn(deed, words, more));
  }

  /** What clears it, where something stands against it that is seen to on its page. */
  private Optional<WayOn> clears() {
    return against()
        .map(verdict -> verdict.words(new JobPartNames(job.state())).first())
        .flatMap(
            first ->
                switch (first) {
                  case DECIDE -> way(Deed.DECIDE, first.words(), first.more());
                  case DO_THE_CHECK -> way(Deed.CHECK, first.words(), first.more());
                  case NEW_PART -> way(Deed.REPLACE, first.words(), "must be new");
                  default -> Optional.empty();
                });
  }

  private Optional<Verdict> against() {
    return new Fitting(job).findAgainst(record.part());
  }

  /** The check that it waits for, where one keeps it from going in or staying. */
  Optional<StandingRule> check() {
    return against().map(Verdict::openCheck).flatMap(key -> job.state().rules().findOpenCheck(key));
  }

  /** The checks that nobody has passed yet and that speak of it. */
  List<StandingRule> openChecks() {
    return job.state().rules().listFor(record.part()).stream()
        .filter(StandingRule::isOpenCheck)
        .toList();
  }

  /** Why a new part comes in its place, where what stands against it says so. */
  Optional<String> whyNew() {
    return against().flatMap(verdict -> StopWords.newPart(job.state(), verdict));
  }
}
