package wherefrom.drawing;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import wherefrom.engine.Layout;
import wherefrom.parts.Place;

/** What is said aloud of a zone: what it is, and the state of what lies in it. */
public final class ZoneWords {
  private final Layout layout;
  private final Drawing drawing;
  private final Asked asked;
  private final Function<Place, PartState> states;

  public ZoneWords(Layout layout, Drawing drawing, Asked asked, Function<Place, PartState> states) {
    this.layout = layout;
    this.drawing = drawing;
    this.asked = asked;
    this.states = states;
  }

  /**
   * The words, such as {@code cylinder 3: cylinder 3, exhaust, pushrod at the machine shop; the
   * rest in the engine}.
   */
  public String of(Zone zone) {
    List<Place> places =
        drawing.parts().stream()
            .map(PartFigure::place)
            .filter(place -> asked.isMeant(place.kind()))
            .filter(place -> zone.target().holds(place))
            .toList();
    return places.isEmpty() ? zone.name() : zone.name() + ": " + states(places);
  }

  private String states(List<Place> places) {
    Map<String, List<Place>> groups =
        places.stream().collect(Collectors.groupingBy(place -> states.apply(place).words()));
    if (places.size() == 1 || groups.size() == 1) {
      return groups.keySet().iterator().next();
    }
    String most =
        groups.entrySet().stream()
            .max(
                Map.Entry.<String, List<Place>>comparingByValue(
                        java.util.Comparator.comparingInt(List::size))
                    .thenComparing(Map.Entry.comparingByKey()))
            .orElseThrow()
            .getKey();
    String others =
        places.stream()
            .filter(place -> !states.apply(place).words().equals(most))
            .map(place -> PlaceWords.of(layout, place) + " " + states.apply(place).words())
            .collect(Collectors.joining(", "));
    return others + "; the rest " + most;
  }
}
