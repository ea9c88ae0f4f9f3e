package wherefrom.ui.shop;

import java.util.Collection;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.ui.app.Desk;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EngineIndex;

/** The engine whose parts of one kind are tapped instead of scanned. */
final class TapIndex implements EngineIndex {
  private final Desk desk;
  private final Consumer<Place> tapped;
  private final Consumer<String> scanned;
  private PartKind kind;

  /**
   * @param kind the one that is tapped at first
   * @param tapped told of the place of each part that is tapped
   * @param scanned told of a code that is scanned on one of the pages
   */
  TapIndex(Desk desk, PartKind kind, Consumer<Place> tapped, Consumer<String> scanned) {
    this.desk = desk;
    this.kind = kind;
    this.tapped = tapped;
    this.scanned = scanned;
  }

  PartKind tappedKind() {
    return kind;
  }

  void choose(PartKind chosen) {
    kind = chosen;
  }

  @Override
  public String title() {
    return "Which " + kind.word() + "?";
  }

  @Override
  public Optional<PartKind> kind() {
    return Optional.of(kind);
  }

  @Override
  public Collection<Place> places() {
    return desk.state().places();
  }

  @Override
  public Function<Place, PartState> states() {
    return PartStates.of(desk.state());
  }

  @Override
  public boolean isOfParts() {
    return false;
  }

  @Override
  public void open(Place place) {
    tapped.accept(place);
  }

  @Override
  public void scan(String text) {
    scanned.accept(text);
  }
}
