package wherefrom.job;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wherefrom.engine.MainSpot;
import wherefrom.engine.RodSpot;
import wherefrom.engine.ShellHalf;
import wherefrom.inspection.Look;
import wherefrom.job.entry.CheckAnswered;
import wherefrom.job.entry.DebrisFound;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.rules.debris.DebrisFind;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisMap;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.Opening;
import wherefrom.rules.debris.ReachedMains;

/** What was found in the oil, and what to open next. */
public final class DebrisBook {
  private final OpenJob job;

  public DebrisBook(OpenJob job) {
    this.job = job;
  }

  public void found(DebrisPlace place, DebrisLook look, String note) {
    job.record(new DebrisFound(place, look, note.strip()));
  }

  /** Something was opened and looked at; what was seen there is noted as a find of its own. */
  public void opened(Opening opening, Look look, String words) {
    job.record(new CheckAnswered(opening.check(), look, words.strip()));
  }

  /** Every find, oldest first. */
  public List<DebrisFind> finds() {
    return job.state().standing().stream()
        .filter(logged -> logged.entry() instanceof DebrisFound)
        .map(logged -> (DebrisFound) logged.entry())
        .map(found -> new DebrisFind(found.place(), found.look()))
        .distinct()
        .toList();
  }

  /** Suspects, what to open next, and whether it reached the mains. */
  public DebrisMap map() {
    return DebrisMap.of(finds(), opened(), bearings());
  }

  private Set<Opening> opened() {
    Set<Opening> opened = EnumSet.noneOf(Opening.class);
    for (LoggedEntry logged : job.state().standing()) {
      if (logged.entry() instanceof CheckAnswered answered && answered.look() != Look.NOT_LOOKED) {
        Stream.of(Opening.values())
            .filter(opening -> opening.check().equals(answered.check()))
            .forEach(opened::add);
      }
    }
    return opened;
  }

  /**
   * What the shells say. Yes, when a face failed or is suspect; no, when the lower shells of the
   * first and the last main and one rod shell at least are clean; else it stays open.
   */
  private ReachedMains bearings() {
    List<Look> faces = new ArrayList<>();
    for (PartRecord part : job.state().parts()) {
      if (part.part().kind() == PartKind.MAIN_SHELL || part.part().kind() == PartKind.ROD_SHELL) {
        face(part).ifPresent(faces::add);
      }
    }
    if (faces.contains(Look.FAIL) || faces.contains(Look.SUSPECT)) {
      return ReachedMains.YES;
    }
    int mains = job.state().layout().mains();
    boolean clean = isClean(1) && isClean(mains) && rodIsClean();
    return clean ? ReachedMains.NO : ReachedMains.OPEN;
  }

  private boolean isClean(int main) {
    return job.state().parts().stream()
        .filter(part -> part.part().home().spot().equals(new MainSpot(main, ShellHalf.LOWER)))
        .filter(part -> part.part().kind() == PartKind.MAIN_SHELL && !part.part().fresh())
        .anyMatch(part -> face(part).equals(Optional.of(Look.PASS)));
  }

  /** One clean rod shell for each crank pin. */
  private boolean rodIsClean() {
    long clean =
        job.state().parts().stream()
            .map(PartRecord::part)
            .filter(part -> part.kind() == PartKind.ROD_SHELL && !part.fresh())
            .filter(part -> face(job.state().getPart(part.item())).equals(Optional.of(Look.PASS)))
            .map(Part::home)
            .map(place -> ((RodSpot) place.spot()).cylinder())
            .distinct()
            .count();
    return clean >= job.state().layout().rodJournals();
  }

  private static Optional<Look> face(PartRecord part) {
    return Optional.ofNullable(part.looks().get(part.part().kind().key() + "-face"))
        .filter(look -> look != Look.NOT_LOOKED);
  }
}
