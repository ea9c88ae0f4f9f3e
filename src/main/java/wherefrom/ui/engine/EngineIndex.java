package wherefrom.ui.engine;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.drawing.View;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Scanned;

/** What the drawn engine is an index of: its places, how each stands, what a tap on one opens. */
public interface EngineIndex {

  /** What stands above the pages, such as {@code Look: pushrods}. */
  String title();

  /** What a tap does, on the page of a cylinder or the mains. */
  default String aside() {
    return "tap a part";
  }

  /** What stands above the page of a side. */
  default String title(View side) {
    return title();
  }

  /** A few words beside the title on how that side stands; may be empty. */
  default String aside(View side) {
    return "";
  }

  /** The one kind that is meant; empty where all are. */
  default Optional<PartKind> kind() {
    return Optional.empty();
  }

  /** The places that can be opened. */
  Collection<Place> places();

  /** How each place stands now: asked anew each time that a page comes up. */
  Function<Place, PartState> states();

  /** The places that are pointed at. */
  default Set<Place> here() {
    return Set.of();
  }

  /**
   * Whether the parts of a cylinder are shown large before one of them opens; else they are listed,
   * where the drawn part only stands for what is meant.
   */
  default boolean isOfParts() {
    return true;
  }

  /** What is meant and has no place on the drawing, as keys below it. */
  default List<KeyRow.Act> besides() {
    return List.of();
  }

  /** A place was tapped. */
  void open(Place place);

  /** A code was scanned while one of the pages is up. */
  void scan(Scanned scanned);
}
