package wherefrom.job.puttogether;

import java.util.Optional;
import wherefrom.engine.Spots;
import wherefrom.job.EngineJob;
import wherefrom.job.EntryRows;
import wherefrom.job.EntryTable;
import wherefrom.job.EntryWords;
import wherefrom.job.LoggedEntry;
import wherefrom.job.OpenJob;
import wherefrom.job.PartRecord;
import wherefrom.job.entry.PartFitted;
import wherefrom.job.entry.StopGiven;
import wherefrom.job.entry.TakenBack;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.PartNames;

/** How the place of a scan stands once the scan was taken back. */
record PlaceNow(Place place) {
  private static final EntryTable<EngineJob, Optional<Place>> PLACES =
      EntryRows.<EngineJob, Optional<Place>>none()
          .on(PartFitted.class, (job, fitted) -> Optional.of(fitted.place()))
          .on(StopGiven.class, PlaceNow::place)
          .others(Optional.empty());

  /** The place that a step is about; empty where it fits no part and stops none. */
  static Optional<PlaceNow> of(EngineJob job, LoggedEntry step) {
    return step.each()
        .map(LoggedEntry::entry)
        .flatMap(entry -> PLACES.of(job, entry).stream())
        .reduce((earlier, later) -> later)
        .map(PlaceNow::new);
  }

  private static Optional<Place> place(EngineJob job, StopGiven stop) {
    return job.findPart(stop.item())
        .map(PartRecord::part)
        .map(Part::kind)
        .flatMap(
            kind ->
                Spots.find(stop.spot())
                    .filter(spot -> Place.canLive(kind, spot))
                    .map(spot -> new Place(kind, spot)));
  }

  /**
   * Takes the stop that stands back, else the last step; says how its place stands then.
   *
   * @param stop the stop that stands
   */
  static FitOutcome takeBack(OpenJob job, Optional<LoggedEntry> stop) {
    if (stop.isPresent()) {
      job.inOne(() -> takeBack(job, stop.get()));
      return tookBack(job.state(), EntryWords.of(job.state(), stop.get().entry()), stop.get());
    }
    return job.undo()
        .match(
            back -> tookBack(job.state(), back.words(), back.step()),
            kept -> new FitOutcome.Said(kept.sentence()),
            nothing -> new FitOutcome.Said(nothing.sentence()));
  }

  /** A stop that another bench has ended meanwhile needs no taking back. */
  private static void takeBack(OpenJob job, LoggedEntry stop) {
    if (job.state().stops().waiting().contains(stop)) {
      job.record(new TakenBack(stop.sequence()));
    }
  }

  /**
   * What was taken back, and how its place stands now.
   *
   * @param words the step, in words
   */
  private static FitOutcome tookBack(EngineJob job, String words, LoggedEntry step) {
    String now = of(job, step).map(place -> place.words(job)).orElse("");
    boolean fitted = step.each().map(LoggedEntry::entry).anyMatch(PartFitted.class::isInstance);
    boolean empty = of(job, step).filter(place -> place.isEmpty(job)).isPresent();
    // A stop recorded nothing at its place, neither in it nor out of it.
    return new FitOutcome.TookBack(
        Optional.of(step), words, fitted || !empty ? now : "Nothing was fitted.");
  }

  private boolean isEmpty(EngineJob job) {
    return job.findFitted(place).isEmpty();
  }

  /** {@code Recorded as empty: rod 7, lower shell.}, or which part: only the engine knows more. */
  String words(EngineJob job) {
    return job.findFitted(place)
        .map(there -> "Recorded as in: " + there.code(job.engine()).typed() + " in ")
        .orElse("Recorded as empty: ")
        .concat(PartNames.NUMBERS.named(place) + ".");
  }
}
