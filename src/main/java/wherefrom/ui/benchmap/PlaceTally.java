package wherefrom.ui.benchmap;

import java.util.ArrayList;
import java.util.List;
import wherefrom.job.PlaceState;

/** How the places of one kind stand, told in few words. */
record PlaceTally(List<PlaceState> places) {

  /**
   * {@code 3 fitted}, {@code all in the engine}, {@code 2 fitted, 1 of them not cleared}, {@code 1
   * fitted, 1 open}.
   */
  String words() {
    long but = but();
    long in = count(PlaceState.IN) + count(PlaceState.IN_BUT);
    long fitted = places.stream().filter(PlaceState::isPutBack).count();
    List<String> said = new ArrayList<>();
    if (in > 0) {
      said.add((in == places.size() ? "all" : Long.toString(in)) + " in the engine");
    }
    if (fitted > 0 || in == 0) {
      said.add((fitted == 0 ? "none" : Long.toString(fitted)) + " fitted");
    }
    if (but > 0) {
      said.add((but == in + fitted ? "" : but + " of them ") + "not cleared");
    }
    tell(said, PlaceState.OPEN);
    tell(said, PlaceState.EXCUSED);
    return String.join(", ", said);
  }

  /**
   * What the numbers of the holders leave out and must not: {@code 1 fitted, not cleared}, {@code 2
   * not cleared}; empty where all is cleared.
   */
  String notCleared() {
    long fitted = count(PlaceState.FITTED_BUT);
    String what = fitted == but() ? " fitted, not cleared" : " not cleared";
    return but() == 0 ? "" : but() + what;
  }

  private long but() {
    return count(PlaceState.IN_BUT) + count(PlaceState.FITTED_BUT);
  }

  private long count(PlaceState wanted) {
    return places.stream().filter(each -> each == wanted).count();
  }

  private void tell(List<String> said, PlaceState wanted) {
    if (count(wanted) > 0) {
      said.add(count(wanted) + " " + wanted.words());
    }
  }
}
