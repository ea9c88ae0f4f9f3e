package wherefrom.job;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wherefrom.job.entry.PartFitted;
import wherefrom.parts.Mates;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.ChangeKind;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.ConsequenceRules;
import wherefrom.rules.consequence.Effect;
import wherefrom.rules.consequence.Setting;

/**
 * What a fit at another place un-mates: there and at the part's home, whose place it leaves open.
 *
 * @param moved the part that is fitted on purpose
 * @param at where it is fitted, which is not its home
 * @param reason why; empty as long as it is only thought of
 * @param places the tracked places whose parts are no longer worn in to each other
 * @param opens whether its home is left open
 */
public record Unmated(Part moved, Place at, String reason, Set<Place> places, boolean opens) {
  public Unmated {
    places = Set.copyOf(places);
  }

  /** What follows when a part is fitted at a place; empty where it is at home there. */
  public static Optional<Unmated> find(EngineJob job, Part part, Place at, String reason) {
    if (part.home().equals(at)) {
      return Optional.empty();
    }
    Set<Place> places = new LinkedHashSet<>();
    Setting setting = new Setting(job.layout(), job.places());
    for (Place place : List.of(at, part.home())) {
      ConsequenceRules.of(Change.at(ChangeKind.SWAPPED, place.key()), setting).stream()
          .filter(consequence -> consequence.effect() == Effect.KNOW)
          .map(Consequence::places)
          .forEach(places::addAll);
    }
    boolean opens = job.findFitted(part.home()).filter(there -> !there.equals(part)).isEmpty();
    return Optional.of(new Unmated(part, at, reason, places, opens));
  }

  /** What stands un-mated in a job now. */
  public static List<Unmated> all(EngineJob job) {
    return job.onPurpose().stream().flatMap(fit -> find(job, fit).stream()).toList();
  }

  private static Optional<Unmated> find(EngineJob job, PartFitted fit) {
    return find(job, job.getPart(fit.item()).part(), fit.place(), fit.onPurpose());
  }

  /** {@code No longer mated at 3 EX and 5 EX: pushrod, rocker, lifter.} */
  public String mates() {
    return "No longer mated at "
        + at.brief()
        + " and "
        + moved.home().brief()
        + ": "
        + moved.kind().word()
        + ", "
        + Mates.of(moved.kind()).words()
        + ".";
  }

  /** {@code 5 EX is open.}; empty where another part fills it. */
  public String opened() {
    return opens ? moved.home().brief() + " is open." : "";
  }

  /** Both in one line. */
  public String words() {
    return (mates() + " " + opened()).strip();
  }

  /** For the page of a part that it concerns: what was fitted where, and why. */
  public String told() {
    return "The "
        + moved.kind().word()
        + " from "
        + moved.home().brief()
        + " is fitted at "
        + at.brief()
        + " on purpose: "
        + reason
        + ". Check the parts at both places as new mates.";
  }
}
