package wherefrom.drawing;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;

/**
 * A drawing whose parts can be shown in any state.
 *
 * @param frame what it covers
 * @param glass what it is made for
 * @param ground what lies below the parts, in the order in which it is drawn
 * @param parts the figure of each place, in the order in which they are drawn
 * @param words numbers and names, drawn over the parts
 * @param anchors where marks are put
 * @param zones what a finger can touch
 * @param carriers heads and rocker shafts, which may be off
 */
public record Drawing(
    Bounds frame,
    Glass glass,
    List<Shape> ground,
    List<PartFigure> parts,
    List<Shape> words,
    List<Anchor> anchors,
    List<Zone> zones,
    List<CarrierFigure> carriers) {
  /** A finger so much nearer to one part than to the next may mean either: 2 mm. */
  private static final double DOUBTFUL = 12;

  public Drawing {
    ground = List.copyOf(ground);
    parts = List.copyOf(parts);
    words = List.copyOf(words);
    anchors = List.copyOf(anchors);
    zones = List.copyOf(zones);
    carriers = List.copyOf(carriers);
  }

  /** A drawing without heads and rocker shafts. */
  public Drawing(
      Bounds frame,
      Glass glass,
      List<Shape> ground,
      List<PartFigure> parts,
      List<Shape> words,
      List<Anchor> anchors,
      List<Zone> zones) {
    this(frame, glass, ground, parts, words, anchors, zones, List.of());
  }

  /** The same with more drawn over it. */
  public Drawing with(List<Shape> over) {
    List<Shape> all = Stream.concat(words.stream(), over.stream()).toList();
    return new Drawing(frame, glass, ground, parts, all, anchors, zones, carriers);
  }

  /**
   * The place in a target whose part lies nearest to a point; empty where another is about as near.
   *
   * @param kinds those that are meant
   */
  public Optional<Place> findNearest(Target target, Predicate<PartKind> kinds, Point at) {
    List<PartFigure> near =
        parts.stream()
            .filter(figure -> target.holds(figure.place()) && kinds.test(figure.place().kind()))
            .sorted(Comparator.comparingDouble(figure -> figure.distance(at)))
            .toList();
    boolean clear =
        near.size() == 1
            || (near.size() > 1
                && near.get(1).distance(at) - near.get(0).distance(at) > glass.px(DOUBTFUL));
    return clear ? Optional.of(near.get(0).place()) : Optional.empty();
  }

  /** The figure of a place; empty where this drawing does not show it. */
  public Optional<PartFigure> find(Place place) {
    return parts.stream().filter(figure -> figure.place().equals(place)).findFirst();
  }

  /**
   * The numbers that a ring reaches and nothing else lies on: they are to be drawn above it.
   *
   * @param pointing rings, arrows and octagons
   */
  public List<Shape> numbersUnder(List<Shape> pointing) {
    return words.stream()
        .filter(word -> word.role() == Role.NUMBER)
        .filter(word -> pointing.stream().anyMatch(shape -> isOn(shape, word)))
        .filter(
            word ->
                pointing.stream()
                    .noneMatch(shape -> !(shape instanceof Shape.Disc) && isOn(shape, word)))
        .toList();
  }

  /** Whether a shape covers some of a word; a ring with the word in it does not. */
  private static boolean isOn(Shape shape, Shape word) {
    Bounds box = word.bounds();
    boolean encloses = shape instanceof Shape.Disc ring && isWithin(ring, box);
    return !encloses && shape.bounds().gapTo(box) < 0;
  }

  private static boolean isWithin(Shape.Disc ring, Bounds box) {
    double across = Math.max(Math.abs(box.x() - ring.x()), Math.abs(box.right() - ring.x()));
    double down = Math.max(Math.abs(box.y() - ring.y()), Math.abs(box.bottom() - ring.y()));
    return Math.hypot(across, down) < ring.radius() - ring.width() / 2;
  }
}
