package wherefrom.ui.bags;

import java.util.Optional;
import java.util.Set;
import javafx.scene.layout.Region;
import wherefrom.drawing.BigPartRing;
import wherefrom.parts.BigPartName;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartStates;
import wherefrom.ui.engine.EngineBeside;

/** The place of a big part on the drawn engine, beside what is said of it. */
final class BigPartPlace {
  private static final double WORDS_MM = 84;

  private BigPartPlace() {}

  /** The engine with its place ringed; empty where the layout does not tell it. */
  static Optional<Region> beside(ScreenContext context, BigPartName name, Region words) {
    if (!BigPartRing.isTold(context.state().layout(), name)) {
      return Optional.empty();
    }
    EngineView engine =
        EngineView.shown(context.touch(), context.state().layout(), context.state().kinds());
    engine.ring(Optional.of(name));
    engine.show(PartStates.of(context.state()), Set.of());
    return Optional.of(new EngineBeside(context.scale(), engine, words, WORDS_MM));
  }
}
