package wherefrom.ui.engine;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.engine.Layout;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.EngineDrawing;
import wherefrom.ui.controls.EngineSide;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** A layout, drawn, to be held against the engine. */
public final class DrawnScreen implements Screen {
  private final EngineDrawing drawing;
  private final Map<EngineSide, TouchKey> keys = new EnumMap<>(EngineSide.class);
  private final VBox view;

  public DrawnScreen(Desk desk, Layout layout) {
    drawing = new EngineDrawing(desk.touch(), layout, spot -> {});
    for (EngineSide side : EngineSide.values()) {
      keys.put(side, desk.touch().key(side.words(), () -> show(side)));
    }
    view =
        Panes.column(
            desk.scale(), drawing, Tiles.row(desk.scale(), keys.values().toArray(TouchKey[]::new)));
    show(EngineSide.TOP);
  }

  private void show(EngineSide side) {
    drawing.show(side, spot -> Optional.empty());
    keys.forEach((each, key) -> key.select(each == side));
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
