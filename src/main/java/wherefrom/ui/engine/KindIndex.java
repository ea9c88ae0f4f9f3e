package wherefrom.ui.engine;

import java.util.Collection;
import java.util.Optional;
import java.util.function.Function;
import wherefrom.drawing.PartState;
import wherefrom.parts.PartKind;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.PartStates;

/** The parts of one kind on the engine. */
public abstract class KindIndex implements EngineIndex {
  protected final ScreenContext context;
  private final PartKind kind;

  protected KindIndex(ScreenContext context, PartKind kind) {
    this.context = context;
    this.kind = kind;
  }

  @Override
  public final String title() {
    return Words.capital(kind.plural());
  }

  @Override
  public final Optional<PartKind> kind() {
    return Optional.of(kind);
  }

  @Override
  public final Collection<Place> places() {
    return context.state().places();
  }

  @Override
  public Function<Place, PartState> states() {
    return PartStates.of(context.state());
  }
}
