package wherefrom.ui.controls;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.engine.Layout;
import wherefrom.engine.Spot;
import wherefrom.job.PlaceState;

/**
 * The engine, drawn from its layout: one target for each spot, the front of the engine on the left.
 * Rows that do not fit are turned to by pages.
 */
public final class EngineDrawing extends VBox {
  private static final double LABEL_MM = 24;

  /** A spot that cannot be tapped only has to hold its words. */
  private static final double SHOWN_MM = 11.5;

  private final Touch touch;
  private final Layout layout;
  private final Consumer<Spot> tapped;
  private final FitText seen;
  private final Pager<SpotRows.Row> rows;
  private EngineSide side = EngineSide.TOP;
  private Function<Spot, Optional<PlaceState>> states = spot -> Optional.empty();
  private Set<Spot> lit = Set.of();
  private Set<Spot> flagged = Set.of();
  private boolean only;

  /**
   * @param tapped told of each spot that is tapped
   */
  public EngineDrawing(Touch touch, Layout layout, Consumer<Spot> tapped) {
    super(touch.scale().px(1.5));
    this.touch = touch;
    this.layout = layout;
    this.tapped = tapped;
    seen = Panes.grow(touch.small("").centred());
    rows = Pager.stretched(touch, this::row);
    FitText front = touch.fit("FRONT", Scale.SMALL_MM, Scale.SMALL_MM, true);
    FitText rear = touch.fit("FLYWHEEL", Scale.SMALL_MM, Scale.SMALL_MM, true);
    front.setMinWidth(Region.USE_PREF_SIZE);
    rear.setMinWidth(Region.USE_PREF_SIZE);
    HBox caption = Panes.row(touch.scale(), front, seen, rear.align(Pos.CENTER_RIGHT));
    caption.setAlignment(Pos.CENTER);
    getStyleClass().add("engine");
    getChildren().addAll(caption, rows);
    Panes.grow(this);
  }

  /** A drawing that only shows, with nothing to tap. */
  public static EngineDrawing shown(Touch touch, Layout layout) {
    EngineDrawing drawing = new EngineDrawing(touch, layout, spot -> {});
    drawing.only = true;
    return drawing;
  }

  /**
   * Draws a side of the engine.
   *
   * @param newStates what is so at a spot; a spot without an answer is drawn plain and cannot be
   *     tapped
   */
  public void show(EngineSide newSide, Function<Spot, Optional<PlaceState>> newStates) {
    boolean turned = side != newSide;
    side = newSide;
    states = newStates;
    seen.setWords(side.seen());
    List<SpotRows.Row> drawn = SpotRows.of(layout, side);
    if (turned) {
      rows.setItems(drawn);
    } else {
      rows.refill(drawn);
    }
  }

  /** Lights these spots up with a thick frame, and no others. */
  public void light(Set<Spot> spots) {
    lit = Set.copyOf(spots);
    rows.refill(SpotRows.of(layout, side));
  }

  /** Flags the spots whose parts want a second look with a toothed frame; shown with the next. */
  public void flag(Set<Spot> spots) {
    flagged = Set.copyOf(spots);
  }

  public EngineSide side() {
    return side;
  }

  private Region row(SpotRows.Row row) {
    FitText name = touch.small(row.words());
    double wide = Math.max(touch.scale().px(LABEL_MM), name.minWidth(-1));
    name.setMinWidth(wide);
    name.setMaxWidth(wide);
    List<Node> spots = new ArrayList<>();
    row.spots().forEach(spot -> spots.add(spot(spot)));
    Tiles tiles =
        Panes.grow(new Tiles(touch.scale(), Math.max(1, spots.size()), Scale.GAP_MM, spots));
    HBox drawn = Panes.row(touch.scale(), name, tiles);
    drawn.getStyleClass().add("spot-row");
    return drawn;
  }

  private Node spot(Spot spot) {
    Optional<PlaceState> state = states.apply(spot);
    double least = only ? SHOWN_MM : Scale.KEY_MM;
    SpotKey key = new SpotKey(touch, spot, state, least);
    key.light(lit.contains(spot));
    key.flag(flagged.contains(spot));
    return state.isPresent() && !only ? touch.target(key, () -> tapped.accept(spot)) : key;
  }
}
