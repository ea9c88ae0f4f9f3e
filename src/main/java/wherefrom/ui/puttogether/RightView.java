package wherefrom.ui.puttogether;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Orientation;
import javafx.geometry.Pos;
import javafx.scene.layout.Region;
import wherefrom.drawing.BelowPanRail;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.ScreenAnswer;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.drawn.PartStates;

/**
 * The right place stands until the next scan: the engine with it ringed, what is left, the next.
 */
final class RightView extends Region {
  private static final double PANEL = 0.41;
  private static final double UPRIGHT_PANEL = 0.38;
  private static final double SIDE = 0.25;

  private static final double TWO_COLUMNS = 0.42;

  /** Two columns of so few keys are wide and low: they make room for what is said above them. */
  private static final double LOW_COLUMNS = 0.55;

  /** So many keys stand in one column beside the engine; more in two. */
  private static final int MOST = 3;

  /** What the keys do. */
  interface Keys {
    /** The part was in turned. */
    void turned();

    /** The part that is recorded as in is in the hand. */
    void hold();

    /** The next code is typed, as it cannot be scanned. */
    void typeCode();

    /** Nothing is left to fit: the sections are finished. */
    void finish();

    /** Whether there is a photograph of the place as it was. */
    boolean hasPhoto();

    /** Shows it large. */
    void photo();

    /** Back to the keys of putting together. */
    void more();
  }

  private final Touch touch;
  private final Keys keys;
  private final EngineView engine;
  private final FitText left;
  private final FitText notice;
  private Optional<RightPanel> panel = Optional.empty();
  private List<TouchKey> made = List.of();
  private Tiles row;
  private boolean upright;

  /** Whether one column of keys is too high below what is said. */
  private boolean crowded;

  RightView(Touch touch, PutTogetherModel model, Keys keys) {
    this.touch = touch;
    this.keys = keys;
    engine = EngineView.shown(touch, model.state().layout(), model.state().kinds());
    engine.foot(BelowPanRail.NONE);
    left = touch.text("");
    notice = touch.fit("", Scale.SMALL_MM, Scale.SMALL_MM, true).align(Pos.CENTER_LEFT);
    row = new Tiles(touch.scale(), 2, Scale.GAP_MM, List.of());
    Panes.grow(this);
  }

  void show(PutTogetherModel model, RightModel right) {
    Place place = right.place();
    ScreenAnswer said = model.answer();
    Cue cue = said.cue().orElse(Cue.RIGHT);
    panel =
        Optional.of(
            new RightPanel(
                touch,
                cue,
                said.headline(),
                right.named(said.lines()),
                said.small(),
                right.wayRound()));
    engine.look(EngineView.sideOf(place.kind()));
    engine.stop(PartStates.of(model.state()), Set.of(), Set.of(place));
    left.setWords(right.leftWords());
    notice.setWords(right.notice());
    made = keys(right);
    crowded = false;
    fill();
  }

  private void fill() {
    row = new Tiles(touch.scale(), columns(), Scale.GAP_MM, made);
    getChildren().setAll(panel.orElseThrow(), notice, engine, left, row);
    getChildren().forEach(child -> child.applyCss());
    requestLayout();
  }

  /** Below the engine the keys are one row: the place above them is to be read from afar. */
  private int columns() {
    return isStacked() ? made.size() : isTwo() ? 2 : 1;
  }

  private boolean isTwo() {
    return made.size() > MOST || crowded;
  }

  private boolean isStacked() {
    return upright || touch.isLarge();
  }

  private List<TouchKey> keys(RightModel right) {
    List<TouchKey> made = new ArrayList<>();
    if (right.canBeTurned()) {
      made.add(touch.key(touch.brief(right.turnedWords(), right.turned()), keys::turned));
    }
    if (right.alreadyIn().isPresent()) {
      made.add(touch.key(touch.brief(WorkKeys.HOLD, WorkKeys.HOLD_BRIEF), keys::hold));
    }
    if (!touch.isLarge() && keys.hasPhoto()) {
      made.add(touch.key("Photo before", keys::photo));
    }
    if (right.isLast()) {
      made.add(touch.key("Finish", keys::finish));
    } else {
      if (!touch.isLarge()) {
        made.add(touch.key("Type code", keys::typeCode));
      }
      made.add(touch.key("Go on", keys::more));
    }
    return made;
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  @Override
  protected double computeMinHeight(double width) {
    return panel.map(words -> words.minHeight(width)).orElse(0.0)
        + noticeHigh(width)
        + keysLeast(width)
        + touch.scale().gap();
  }

  @Override
  protected void layoutChildren() {
    if (panel.isEmpty()) {
      return;
    }
    boolean stands = getHeight() > getWidth();
    if (stands != upright) {
      upright = stands;
      fill();
    }
    double gap = touch.scale().gap();
    double told = noticeHigh(getWidth());
    double least = panel.get().minHeight(getWidth());
    if (!isStacked() && !isTwo() && least + keysHigh(getWidth()) + gap + told > getHeight()) {
      crowded = true;
      fill();
    }
    double keysAlone = keysHigh(getWidth()) + gap + told;
    double share = panelHigh(keysAlone);
    double high = Math.max(least, Math.min(share, getHeight() - keysAlone));
    Panes.place(panel.get(), 0, 0, getWidth(), high);
    Panes.place(notice, 0, Math.floor(high) + gap / 2, getWidth(), told);
    double top = Math.floor(high) + gap + told;
    if (isStacked()) {
      below(top, gap);
    } else {
      beside(top, gap);
    }
  }

  /** The place takes what the drawing has no use for. */
  private double panelHigh(double keysAlone) {
    double share = (upright ? UPRIGHT_PANEL : PANEL) * getHeight();
    double left = getHeight() - share - keysAlone - touch.scale().gap();
    boolean drawn = !isStacked() || engine.hasRoom(getWidth(), Math.max(0, left));
    return drawn ? share : getHeight();
  }

  /** What the right place says nothing of never leaves for want of room. */
  private double noticeHigh(double width) {
    return notice.words().isEmpty() ? 0 : Math.ceil(notice.minHeight(width));
  }

  /** How high the keys are: below the engine as wide as the glass, else in their column. */
  private double keysHigh(double width) {
    return Math.ceil(row.minHeight(isStacked() || width <= 0 ? width : sideWide(width)));
  }

  /** The same at least: in two columns, where one is too high. */
  private double keysLeast(double width) {
    if (isStacked() || width <= 0) {
      return row.minHeight(width);
    }
    double gap = touch.scale().gap();
    double each = (twoColumns() * width - gap) / 2;
    double highest = made.stream().mapToDouble(key -> key.minHeight(each)).max().orElse(0);
    int rows = (made.size() + 1) / 2;
    return rows * highest + (rows - 1) * gap;
  }

  private double twoColumns() {
    return made.size() > MOST ? TWO_COLUMNS : LOW_COLUMNS;
  }

  private double sideWide(double width) {
    double share = isTwo() ? twoColumns() : SIDE;
    return Math.floor(Math.max(share * width, row.minWidth(-1)));
  }

  private void beside(double top, double gap) {
    double side = sideWide(getWidth());
    double x = getWidth() - side;
    double rows = Math.ceil(row.minHeight(side));
    Panes.place(engine, 0, top, x - gap, getHeight() - top);
    Panes.place(row, x, getHeight() - rows, side, rows);
    told(x, top, side, getHeight() - rows - gap - top);
  }

  private void below(double top, double gap) {
    if (upright) {
      under(top, gap);
      return;
    }
    double wide = getWidth();
    double half = Math.floor((wide - gap) / 2);
    double narrow = Math.ceil(row.minHeight(half));
    boolean told = left.minHeight(half) <= narrow && top + narrow <= getHeight();
    double rows = told ? narrow : Math.ceil(row.minHeight(wide));
    double y = getHeight() - rows;
    Panes.place(row, told ? wide - half : 0, y, told ? half : wide, rows);
    told(0, y, told ? half : 0, rows);
    double high = y - gap - top;
    engine.setVisible(high >= touch.scale().px(Scale.KEY_MM));
    Panes.place(engine, 0, top, wide, high);
  }

  /** Upright: the engine, what is left where it costs no engine, the keys, as wide as the glass. */
  private void under(double top, double gap) {
    double wide = getWidth();
    double rows = Math.ceil(row.minHeight(wide));
    double y = getHeight() - rows;
    Panes.place(row, 0, y, wide, rows);
    double needed = left.words().isEmpty() ? 0 : Math.ceil(left.minHeight(wide));
    double free = y - 1.5 * gap - top;
    boolean costs = engine.hasRoom(wide, free) && !engine.hasRoom(wide, free - needed);
    double line = y - gap - needed >= top && !costs ? needed : 0;
    double over = y - gap - line;
    told(0, over, wide, line);
    double high = over - gap / 2 - top;
    engine.setVisible(high >= touch.scale().px(Scale.KEY_MM));
    Panes.place(engine, 0, top, wide, high);
  }

  private void told(double x, double y, double wide, double high) {
    boolean room = wide > 0 && left.minHeight(wide) <= high;
    left.setVisible(room);
    if (room) {
      Panes.place(left, x, y, wide, Math.min(high, left.prefHeight(wide)));
    }
  }
}
