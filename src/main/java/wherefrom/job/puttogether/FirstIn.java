package wherefrom.job.puttogether;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wherefrom.job.EngineJob;
import wherefrom.job.JobPartNames;
import wherefrom.parts.Over;
import wherefrom.parts.Part;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.parts.Whereabouts;
import wherefrom.rules.PartNames;

/**
 * What must be in first: all that lies under a part, as the shells under a cap, the lifter under
 * its pushrod, the pushrod, the spring and the valve under a rocker; and of a shell the cap or rod
 * that it lies in must be at hand. Of the places that are tracked. It is a notice about the order
 * and stops nothing: whether a part is the right one does not hang on it.
 */
public final class FirstIn {
  private static final Set<Whereabouts> AWAY =
      Set.of(Whereabouts.WASHING, Whereabouts.AT_SHOP, Whereabouts.LOST);

  private final EngineJob state;

  public FirstIn(EngineJob state) {
    this.state = state;
  }

  /**
   * The empty places under this one, the innermost first; places that are left empty for a reason
   * are none.
   */
  public List<Place> under(Place place) {
    return state.places().stream()
        .filter(other -> Over.isOver(/* upper= */ place, /* lower= */ other))
        .filter(other -> state.findSeated(other).isEmpty())
        .filter(other -> state.findExcuse(other).isEmpty())
        .sorted(Comparator.comparing(Place::kind, Comparator.reverseOrder()))
        .toList();
  }

  /**
   * The place of the cap that is open over what sits here, where all under it is in: it was off for
   * the shell, and has its own bolts and torque.
   */
  public Optional<Place> findCapDue(Place place) {
    return Over.findCap(place)
        .filter(state.places()::contains)
        .filter(cap -> state.findSeated(cap).isEmpty() && state.findExcuse(cap).isEmpty())
        .filter(cap -> under(cap).isEmpty());
  }

  /** The part that this place's part lies in, where that is away; empty where it is at hand. */
  public Optional<Part> findHolderAway(Place place) {
    return Over.findHolder(place)
        .filter(state.places()::contains)
        .flatMap(state.bench()::findRightful)
        .filter(holder -> AWAY.contains(state.whereabouts(holder.item())));
  }

  /**
   * The notice, in one short sentence: {@code Not in yet: lifter, pushrod.}, {@code Not in yet:
   * upper shell, lower shell.}, {@code Its cap is at the machine shop, visit 1.}; empty where
   * nothing is to be said.
   */
  public Optional<String> notice(Place place) {
    List<String> said = new ArrayList<>();
    List<Place> empty = under(place);
    if (!empty.isEmpty()) {
      said.add(
          empty.stream().map(FirstIn::name).collect(Collectors.joining(", ", "Not in yet: ", ".")));
    }
    findHolderAway(place).ifPresent(holder -> said.add(away(holder)));
    return said.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", said));
  }

  /** Its kind is enough at the same spot; of two shells which one. */
  private static String name(Place place) {
    return switch (place.kind()) {
      case ROD_SHELL, MAIN_SHELL -> place.shell();
      default -> place.kind().word();
    };
  }

  private String away(Part holder) {
    PartNames names = new JobPartNames(state);
    boolean lost = state.whereabouts(holder.item()) == Whereabouts.LOST;
    String what = holder.kind() == PartKind.ROD ? "rod" : "cap";
    return "Its " + what + " is " + (lost ? "lost" : names.whereabouts(holder)) + ".";
  }
}
