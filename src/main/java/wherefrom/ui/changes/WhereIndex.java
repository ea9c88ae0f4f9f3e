package wherefrom.ui.changes;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.drawing.View;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.engine.EngineIndex;

/** Where on the drawn engine a change is: a tap there answers, and so does a part's tag. */
final class WhereIndex implements EngineIndex {
  private static final String WANTED = "Tap where it is. Or scan the tag of the part there.";

  private final ScreenContext context;
  private final String title;
  private final String aside;
  private final Optional<PartKind> kind;
  private final WherePlaces places;
  private final Map<Place, String> keys;
  private final Consumer<String> done;
  private final Screen asking;

  /**
   * Made while the screen is up that asks; it is up again when the answer is given.
   *
   * @param kind the one that is meant on the drawing; empty where all are
   * @param done is given the place's name in a change
   */
  WhereIndex(
      ScreenContext context,
      String title,
      String aside,
      Optional<PartKind> kind,
      WherePlaces places,
      Consumer<String> done) {
    this.context = context;
    this.title = title;
    this.aside = aside;
    this.kind = kind;
    this.places = places;
    this.keys = places.keys();
    this.done = done;
    this.asking = context.navigator().current();
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public String aside(View side) {
    return aside;
  }

  @Override
  public Optional<PartKind> kind() {
    return kind;
  }

  @Override
  public Collection<Place> places() {
    return keys.keySet();
  }

  @Override
  public Function<Place, PartState> states() {
    return place -> PartState.IN;
  }

  @Override
  public void open(Place place) {
    Optional.ofNullable(keys.get(place)).ifPresent(this::answer);
  }

  /** Goes back to what asked, then answers. */
  void answer(String key) {
    context.navigator().backTo(asking);
    done.accept(key);
  }

  @Override
  public void scan(Scanned scanned) {
    ScannedPart.find(context, scanned, WANTED)
        .flatMap(item -> context.state().findPart(item))
        .flatMap(part -> at(part.part().home()))
        .ifPresent(this::open);
  }

  private Optional<Place> at(Place home) {
    Optional<Place> found = places.around(home);
    if (found.isEmpty()) {
      context.say(WANTED);
    }
    return found;
  }
}
