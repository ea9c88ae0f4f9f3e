package wherefrom.ui.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.drawing.BelowPanRail;
import wherefrom.drawing.EngineStates;
import wherefrom.drawing.PartState;
import wherefrom.drawing.Target;
import wherefrom.drawing.View;
import wherefrom.parts.Home;
import wherefrom.parts.Place;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.RailKey;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.StandardRail;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.Tap;

/** The engine from above or below at full width: a cylinder opens large, a main with all mains. */
public final class EnginePageScreen extends Page implements Scannable {
  private final EnginePages pages;
  private final EngineView engine;
  private final EngineToldView told;
  private final VBox view;
  private final KeyRow besides;

  EnginePageScreen(ScreenContext context, EnginePages pages, View side) {
    super(context, "");
    this.pages = pages;
    engine = EngineView.keyed(context.touch(), pages.layout(), pages.kinds(), this::tapped);
    engine.live(pages::leadsOn);
    pages.index().kind().ifPresent(engine::choose);
    engine.foot(hasMains() ? BelowPanRail.KEYS : BelowPanRail.NONE);
    engine.look(side);
    told = new EngineToldView(context.touch(), engine);
    view = Panes.column(context.scale(), told);
    camBearings().ifPresent(view.getChildren()::add);
    besides = KeyRow.of(context);
    lay(view);
  }

  private boolean hasMains() {
    return pages.index().kind().filter(kind -> kind.home() != Home.MAIN).isEmpty();
  }

  private Optional<Region> camBearings() {
    List<Node> keys = new ArrayList<>();
    pages.camBearings().forEach(place -> keys.add(cam(place)));
    return keys.isEmpty()
        ? Optional.empty()
        : Optional.of(Tiles.row(context.scale(), keys.toArray(Node[]::new)));
  }

  private Node cam(Place place) {
    return context.touch().key(place.spot().figures(), () -> pages.index().open(place));
  }

  private void turn() {
    engine.turnOver();
    context.navigator().changed();
  }

  @Override
  public String aside() {
    return pages.index().aside(engine.side());
  }

  @Override
  public List<RailKey> rail(StandardRail standard) {
    RailKey turn = new RailKey(Icon.TURN, "Turn", this::turn).saying("Turn over");
    List<RailKey> keys = new ArrayList<>();
    standard.back().ifPresent(keys::add);
    standard.bench().ifPresent(keys::add);
    if (pages.index().kind().isEmpty()) {
      keys.add(turn);
    } else {
      standard.camera().ifPresent(keys::add);
    }
    return keys;
  }

  private void tapped(Tap tap) {
    if (tap.target() instanceof Target.Whole) {
      pages.list(engine.side());
    } else {
      pages.tapped(tap);
    }
  }

  @Override
  public String title() {
    return pages.index().title(engine.side());
  }

  @Override
  protected void refresh() {
    pages.show(engine);
    told.tell(
        pages.index().places().stream().filter(this::isMeant).toList(),
        pages.index().states(),
        off());
    List<KeyRow.Act> acts = pages.index().besides();
    besides.setActs(acts);
    view.getChildren().remove(besides);
    if (!acts.isEmpty()) {
      view.getChildren().add(besides);
    }
  }

  /** Heads and shafts that are off have marks of their own, seen from above. */
  private List<PartState> off() {
    return engine.side() == View.ABOVE && pages.index().states() instanceof EngineStates states
        ? states.listOff()
        : List.of();
  }

  /** Whether it can be seen from this side, and is of the kind that is meant. */
  private boolean isMeant(Place place) {
    boolean ofKind = pages.index().kind().map(kind -> kind == place.kind()).orElse(true);
    return ofKind && EngineView.sideOf(place.kind()) == engine.side();
  }

  @Override
  public void scan(Scanned scanned) {
    pages.index().scan(scanned);
  }
}
