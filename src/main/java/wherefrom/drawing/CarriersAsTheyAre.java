package wherefrom.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import wherefrom.parts.BigPartKind;
import wherefrom.parts.Place;

/**
 * A drawing's castings as they are: a head or a rocker shaft that is off is one dashed contour with
 * its mark, nothing inside. A shaft whose head is off lies no longer there either.
 *
 * @param ground what is drawn below the parts
 * @param outlines the contours of what is off, drawn over the ground in the look of what is out
 * @param marks what its marks are made of
 */
public record CarriersAsTheyAre(List<Shape> ground, List<Shape> outlines, List<Shape> marks) {
  public CarriersAsTheyAre {
    ground = List.copyOf(ground);
    outlines = List.copyOf(outlines);
    marks = List.copyOf(marks);
  }

  /** The heads and shafts that are off, each with its state: all that the drawing follows from. */
  public static Map<CarrierFigure, PartState> off(
      Drawing drawing, Function<Place, PartState> states) {
    IdentityHashMap<CarrierFigure, PartState> off = new IdentityHashMap<>();
    for (CarrierFigure figure : drawing.carriers()) {
      EngineStates.findOff(states, figure).ifPresent(state -> off.put(figure, state));
    }
    return off;
  }

  /** Draws what is so. */
  public static CarriersAsTheyAre of(Drawing drawing, Map<CarrierFigure, PartState> off) {
    Set<Shape> gone = Collections.newSetFromMap(new IdentityHashMap<>());
    List<Shape> outlines = new ArrayList<>();
    List<Shape> marks = new ArrayList<>();
    for (CarrierFigure figure : drawing.carriers()) {
      PartState state = off.get(figure);
      if (state == null) {
        if (isHeadOff(figure, off)) {
          gone.addAll(figure.solid());
        }
        continue;
      }
      gone.addAll(figure.solid());
      outlines.addAll(figure.outline());
      figure.mark().ifPresent(at -> marks.addAll(mark(figure, at, state, drawing.glass())));
    }
    List<Shape> ground = drawing.ground().stream().filter(shape -> !gone.contains(shape)).toList();
    return new CarriersAsTheyAre(ground, outlines, marks);
  }

  private static boolean isHeadOff(CarrierFigure shaft, Map<CarrierFigure, PartState> off) {
    return off.keySet().stream()
        .anyMatch(head -> head.kind() == BigPartKind.HEAD && head.cylinder() == shaft.cylinder());
  }

  private static List<Shape> mark(CarrierFigure figure, Point at, PartState state, Glass glass) {
    return state.sign() == Sign.OUT
        ? MarkShapes.tag(at, figure.side(), glass).shapes()
        : MarkShapes.of(state.sign(), at, figure.side(), glass).shapes();
  }
}
