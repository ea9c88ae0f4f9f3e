package wherefrom.job.puttogether;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import wherefrom.engine.Section;
import wherefrom.engine.Spot;
import wherefrom.engine.ValveSide;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.PlaceState;
import wherefrom.job.entry.PlaceExcused;
import wherefrom.job.entry.SectionClosed;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.CapInRule;
import wherefrom.rules.CarrierRule;
import wherefrom.rules.HolderRule;
import wherefrom.rules.JobFacts;
import wherefrom.rules.Objection;
import wherefrom.rules.Objections;
import wherefrom.rules.PartNames;
import wherefrom.rules.Verdict;

/**
 * What is still to be done in putting together: places to fit, and parts that sit in a place where
 * something stands against them. A section is finished only when neither is left in it.
 */
public final class ToFit {

  /**
   * A part that sits in a place where something stands against it.
   *
   * @param against all of it, the most serious first; never empty
   */
  public record FittedBut(Place place, Part part, List<Objection> against) {
    public FittedBut {
      against = List.copyOf(against);
    }

    /** Whether a reason can settle all of it. */
    public boolean canStay() {
      return against.stream().allMatch(Objection::canBeSettled);
    }

    /** What stands against it most, in a sentence. */
    public String sentence() {
      return against.get(0).verdict().sentence();
    }

    /** The same in few words, as below the lines of a stop. */
    public String brief() {
      String small = against.get(0).verdict().words(PartNames.NUMBERS).small();
      return small.isEmpty() ? sentence() : small;
    }
  }

  private final OpenJob job;

  public ToFit(OpenJob job) {
    this.job = job;
  }

  /** Every place to fit, in the order of putting together: bottom end first. */
  public List<Place> places() {
    EngineJob state = job.state();
    return inOrder(
        state.places().stream()
            .filter(place -> state.findSeated(place).isEmpty() && !state.isFilled(place))
            .toList());
  }

  public List<Place> places(Section section) {
    return places().stream().filter(place -> isIn(section, place)).toList();
  }

  /**
   * A part whose place is open and that would be stopped there for another reason than the place.
   *
   * @param why what would be said of it
   */
  public record Held(Place place, Part part, Verdict why) {}

  /** Every open place whose part would be stopped, in the same order. */
  public List<Held> held() {
    return places().stream().flatMap(place -> findHeld(place).stream()).toList();
  }

  /** The part of an open place, where that would be stopped; empty where it can go in. */
  public Optional<Held> findHeld(Place place) {
    JobFacts bench = job.state().bench();
    return bench
        .findRightful(place)
        .flatMap(
            part ->
                Objections.of(bench, part, place).stream()
                    .findFirst()
                    .<Verdict>map(Objection::verdict)
                    .or(() -> CapInRule.find(bench, part, place))
                    .or(() -> CarrierRule.find(bench, part, place))
                    .or(() -> HolderRule.find(bench, part, place))
                    .map(why -> new Held(place, part, why)));
  }

  /** The next of these places: one whose part lies on the bench comes first. */
  public Optional<Place> findNext(List<Place> places) {
    List<Place> here =
        places.stream().filter(place -> job.state().state(place) == PlaceState.OUT).toList();
    return findFree(here).or(() -> findFree(places));
  }

  /** The first of these places whose part can go in; empty where each would be stopped. */
  public Optional<Place> findFree(List<Place> open) {
    return open.stream().filter(place -> findHeld(place).isEmpty()).findFirst();
  }

  /** Every part that sits in a place where something stands against it, in the same order. */
  public List<FittedBut> fittedBut() {
    EngineJob state = job.state();
    List<FittedBut> all = new ArrayList<>();
    for (Place place : inOrder(List.copyOf(state.places()))) {
      List<Objection> against = state.listAgainst(place);
      if (!against.isEmpty()) {
        all.add(new FittedBut(place, state.findSeated(place).orElseThrow(), against));
      }
    }
    return all;
  }

  public List<FittedBut> fittedBut(Section section) {
    return fittedBut().stream().filter(one -> isIn(section, one.place())).toList();
  }

  private boolean isIn(Section section, Place place) {
    return Section.of(job.state().layout(), place.spot()).equals(section);
  }

  /** Whether every place is filled rightly, or left as it is for a reason. */
  public static boolean isNothing(EngineJob state) {
    return state.places().stream().allMatch(state::isFilled);
  }

  /**
   * Last out, first in: the stages of taking apart backwards; within a stage cylinder by cylinder
   * as they stand, and there what lies under another part before it.
   */
  public static List<Place> inOrder(List<Place> places) {
    List<Place> ordered = new ArrayList<>(places);
    ordered.sort(
        Comparator.<Place>comparingInt(place -> -place.kind().stage())
            .thenComparingInt(place -> place.spot().number())
            .thenComparingInt(place -> side(place.spot()))
            .thenComparing(Place::kind, Comparator.reverseOrder()));
    return ordered;
  }

  private static int side(Spot spot) {
    return spot.match(
        valve -> valve.side() == ValveSide.INTAKE ? 0 : 1,
        bore -> 0,
        rod -> 0,
        main -> 0,
        cam -> 0);
  }

  /** The sections that hold at least one tracked place. */
  public List<Section> sections() {
    EngineJob state = job.state();
    return Section.all(state.layout()).stream()
        .filter(
            section ->
                state.places().stream()
                    .anyMatch(place -> Section.of(state.layout(), place.spot()).equals(section)))
        .toList();
  }

  /**
   * Leaves a place as it is, empty or not, for a reason that stands in the build record.
   *
   * @throws IllegalArgumentException with a plain sentence when the reason is missing, or what sits
   *     there must be new
   */
  public void leave(Place place, String reason) {
    job.inOne(() -> leaveOnce(place, reason));
  }

  private void leaveOnce(Place place, String reason) {
    if (reason.isBlank()) {
      throw new IllegalArgumentException("Say why the place is left as it is.");
    }
    if (!canStay(place)) {
      throw new IllegalArgumentException(
          "The " + place.kind().word() + " there must be new: no reason keeps the old one in.");
    }
    job.record(new PlaceExcused(place, reason.strip()));
  }

  /** Whether a reason can settle what stands against the part that sits in a place. */
  public boolean canStay(Place place) {
    return job.state().listAgainst(place).stream().allMatch(Objection::canBeSettled);
  }

  /** Finishes a section; false, and nothing is logged, while anything in it is open. */
  public boolean finish(Section section) {
    return job.asOne(() -> finishOnce(section));
  }

  private boolean finishOnce(Section section) {
    if (!places(section).isEmpty() || !fittedBut(section).isEmpty()) {
      return false;
    }
    job.record(new SectionClosed(section.key()));
    return true;
  }
}
