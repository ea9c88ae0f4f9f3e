package wherefrom.ui.numbers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.job.numbers.FigureOutcome;
import wherefrom.quantity.Unit;
import wherefrom.quantity.UnitSystem;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.Typable;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.PadKeys;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.workings.AmountInput;

/** Asks for one figure with its unit and, where it is known, how far it may be off. */
public final class FigureScreen extends Page implements Typable {
  private final Touch touch;
  private final FigureModel model;
  private final String none;
  private final Function<String, FigureOutcome> done;
  private final TouchKey value;
  private final TouchKey spread;
  private final TouchKey kind;
  private final Tiles units;

  /**
   * @param text as it was typed before; empty for none
   * @param none what the key says that leaves it without a figure; empty for no such key
   * @param done is given the figure as typed, or an empty text; a refusal leaves the screen up
   */
  public FigureScreen(
      ScreenContext context,
      AmountInput input,
      String text,
      String none,
      Function<String, FigureOutcome> done) {
    super(context, "", false);
    this.touch = context.touch();
    this.none = none;
    this.done = done;
    model = new FigureModel(input, text, units(context));
    value = touch.key("", () -> choose(false));
    spread = touch.key("", () -> choose(true));
    kind = touch.key("", this::turnKind);
    units = new Tiles(context.scale(), 3, Scale.GAP_MM, List.of());
    lay(new Split(context.scale(), pad(), side()));
    show();
  }

  private static UnitSystem units(ScreenContext context) {
    return context.job().map(job -> job.state().units()).orElse(UnitSystem.INCH);
  }

  private Region pad() {
    List<Node> keys = new ArrayList<>();
    for (String figure : List.of("1", "2", "3", "4", "5", "6", "7", "8", "9", ".", "0")) {
      keys.add(touch.padKey(figure, () -> type(figure)));
    }
    keys.add(touch.padKey("Erase", this::erase));
    Region fields = Tiles.row(context.scale(), value, spread);
    return Panes.grow(Panes.column(context.scale(), fields, new PadKeys(touch, keys)));
  }

  private Region side() {
    AmountInput input = model.input();
    FitText meaning = Panes.grow(touch.small(input.meaning()));
    List<Node> turns = new ArrayList<>();
    if (model.canBeNegative()) {
      turns.add(touch.key(Keypad.SIGN, this::turnSign));
    }
    turns.add(kind);
    List<Node> ends = new ArrayList<>();
    if (!none.isEmpty()) {
      ends.add(touch.key(none, () -> finish("")));
    }
    ends.add(touch.tag("Done", "", this::enter));
    return Panes.grow(
        Panes.column(
            context.scale(),
            meaning,
            units,
            new Tiles(context.scale(), 2, Scale.GAP_MM, turns),
            new VBox(context.scale().gap(), ends.toArray(Node[]::new))));
  }

  private void show() {
    value.setWords(model.valueWords());
    value.select(!model.onSpread());
    spread.setWords(model.spreadWords());
    spread.select(model.onSpread());
    kind.setWords(model.atMost() ? "± is its largest error" : "± is the standard uncertainty");
    List<Node> keys = new ArrayList<>();
    List<Unit> offered = FigureModel.units(model.input().dimension());
    if (offered.size() > 1) {
      offered.forEach(unit -> keys.add(unitKey(unit)));
    }
    units.setCells(keys);
    units.setManaged(!keys.isEmpty());
  }

  private TouchKey unitKey(Unit unit) {
    return touch.key(unit.symbol(), () -> choose(unit)).select(unit == model.unit());
  }

  private void choose(Unit unit) {
    model.unit(unit);
    show();
  }

  private void choose(boolean onSpread) {
    model.choose(onSpread);
    show();
  }

  private void turnSign() {
    model.turnSign();
    show();
  }

  private void turnKind() {
    model.turnAtMost();
    show();
  }

  @Override
  public void type(String character) {
    model.type(character);
    show();
  }

  @Override
  public void erase() {
    model.erase();
    show();
  }

  @Override
  public void takeOver(Screen before) {
    if (before instanceof FigureScreen same) {
      model.goOn(same.model);
      show();
    }
  }

  @Override
  public Runnable remember() {
    Runnable asNow = model.remember();
    return () -> {
      asNow.run();
      show();
    };
  }

  @Override
  public void enter() {
    finish(model.text());
  }

  private void finish(String text) {
    context.attempt(
        () -> {
          if (done.apply(text) instanceof FigureOutcome.Refused refused) {
            context.say(refused.sentence());
          } else {
            context.navigator().back();
          }
        });
  }

  @Override
  public String title() {
    return model.input().words();
  }
}
