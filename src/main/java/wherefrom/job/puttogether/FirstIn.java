package wherefrom.job.puttogether;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wherefrom.job.EngineJob;
import wherefrom.parts.Over;
import wherefrom.parts.Place;

/**
 * What must be in first: all that lies under a part, as the shells under a cap, the lifter under
 * its pushrod, the pushrod, the spring and the valve under a rocker. Of the places that are
 * tracked. It is a notice about the order and stops nothing: whether a part is the right one does
 * not hang on it.
 */
public final class FirstIn {
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

  /**
   * The notice, in one short sentence: {@code Not in yet: lifter, pushrod.}, {@code Not in yet:
   * upper shell, lower shell.}; empty where nothing is to be said.
   */
  public Optional<String> notice(Place place) {
    List<Place> empty = under(place);
    return empty.isEmpty()
        ? Optional.empty()
        : Optional.of(
            empty.stream()
                .map(FirstIn::name)
                .collect(Collectors.joining(", ", "Not in yet: ", ".")));
  }

  /** Its kind is enough at the same spot; of two shells which one. */
  private static String name(Place place) {
    return switch (place.kind()) {
      case ROD_SHELL, MAIN_SHELL -> place.shell();
      default -> place.kind().word();
    };
  }
}
