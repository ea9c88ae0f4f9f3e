package wherefrom.ui.engine;

import java.util.List;
import java.util.Set;
import javafx.scene.layout.VBox;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.PartState;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.RailKey;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.StandardRail;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.drawn.EngineView;

/** A layout, drawn, to be held against the engine. */
public final class DrawnScreen extends Page {
  private final EngineView engine;

  public DrawnScreen(ScreenContext context, Layout layout) {
    super(context, "Drawn from the layout", false);
    engine = EngineView.shown(context.touch(), layout, PartKind.all());
    engine.foot(BelowPanRail.NAMES);
    engine.show(place -> PartState.IN, Set.of());
    VBox view = Panes.column(context.scale(), engine);
    lay(view);
  }

  @Override
  public List<RailKey> rail(StandardRail standard) {
    return standard.with(new RailKey(Icon.TURN, "Turn", engine::turnOver).saying("Turn over"));
  }
}
