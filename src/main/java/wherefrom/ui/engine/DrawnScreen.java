package wherefrom.ui.engine;

import java.util.List;
import java.util.Set;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.drawing.Foot;
import wherefrom.drawing.PartState;
import wherefrom.engine.Layout;
import wherefrom.parts.PartKind;
import wherefrom.ui.app.RailKey;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.StandardRail;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.drawn.EngineView;

/** A layout, drawn, to be held against the engine. */
public final class DrawnScreen implements Screen {
  private final EngineView engine;
  private final VBox view;

  public DrawnScreen(ScreenContext context, Layout layout) {
    engine = EngineView.shown(context.touch(), layout, PartKind.all());
    engine.foot(Foot.NAMES);
    engine.show(place -> PartState.IN, Set.of());
    view = Panes.column(context.scale(), engine);
  }

  @Override
  public List<RailKey> rail(StandardRail standard) {
    return standard.with(new RailKey(Icon.TURN, "Turn", engine::turnOver).saying("Turn over"));
  }

  @Override
  public String title() {
    return "Drawn from the layout";
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
