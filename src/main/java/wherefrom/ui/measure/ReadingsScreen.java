package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Question;
import wherefrom.inspection.measure.Station;
import wherefrom.inspection.measure.Tool;
import wherefrom.quantity.UnitChoice;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.RailKey;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.StandardRail;
import wherefrom.ui.app.Typable;
import wherefrom.ui.controls.Icon;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.subject.Tagged;

/** One size at a time: the spot to measure, a large pad, what was read; then what follows. */
public final class ReadingsScreen extends Page implements Typable, Scannable {
  private final ReadingsModel model;
  private SizePad pad;
  private UnitChoice units;
  private final ReadingsResult result;
  private final ReadingsTool tools;
  private final ReadingsWords words;
  private final UntakenFigures untaken;
  private Optional<UntakenFigures.At> at = Optional.empty();
  private final StackPane view = Panes.grow(new StackPane());

  public ReadingsScreen(ScreenContext context, Subject subject, String plan) {
    super(context, "");
    model = new ReadingsModel(context.getJob(), subject, plan);
    units = model.plan().units();
    pad = padFor(units);
    result = new ReadingsResult(context, model);
    tools = new ReadingsTool(context, model);
    words = new ReadingsWords(context, model);
    untaken = context.kept().keepOfJob(UntakenFigures.class, UntakenFigures::new);
    lay(view);
  }

  /** The same, to read this station anew; by an empty one in the plan's order. */
  static ReadingsScreen at(ScreenContext context, Subject subject, String plan, String station) {
    ReadingsScreen screen = new ReadingsScreen(context, subject, plan);
    screen.model.plan().findStation(station).ifPresent(screen.model::anew);
    return screen;
  }

  private boolean isReading() {
    return model.questions().isEmpty() && model.tool().isPresent() && model.station().isPresent();
  }

  /** Whose it is; with the largest letters the spot to measure has no other place. */
  @Override
  public String title() {
    return isSpotTitle()
        ? model.station().map(model::titleAt).orElse("")
        : touch()
            .brief(
                model.title(), ReadingTitle.brief(context.state(), model.subject(), model.plan()));
  }

  private boolean isSpotTitle() {
    return isReading() && context.scale().textFactor() >= 2;
  }

  @Override
  public String aside() {
    return model.tool().isEmpty() ? "no tool" : model.count();
  }

  /** With the largest letters the pad leaves the further keys no room. */
  @Override
  public List<RailKey> rail(StandardRail standard) {
    return isSpotTitle()
        ? standard.with(new RailKey(Icon.MORE, "Tool", this::more))
        : standard.all();
  }

  /** What was read is not kept; the reading is taken again. */
  @Override
  public boolean escape() {
    return !model.questions().isEmpty() && again();
  }

  /** A question that stands is taken back first: what was kept before it is not asked about. */
  @Override
  public void undo(ScreenContext over) {
    if (model.undoes().isPresent()) {
      model.drop();
      over.navigator().changed();
    } else {
      super.undo(over);
    }
  }

  @Override
  public String undoes(ScreenContext over) {
    return model.undoes().orElseGet(() -> super.undoes(over));
  }

  @Override
  public boolean isOpen() {
    return isReading();
  }

  @Override
  public void type(String character) {
    pad.type(character);
  }

  @Override
  public void erase() {
    pad.erase();
  }

  @Override
  public Runnable remember() {
    return pad.remember();
  }

  @Override
  public void enter() {
    if (pad.isEmpty() || !model.questions().isEmpty()) {
      return;
    }
    context.attempt(() -> came(model.enter(pad.typed())));
  }

  /** Turns to a reading: what was typed for the one before waits there, for this one it returns. */
  private void turn(Optional<UntakenFigures.At> next, UnitChoice shown) {
    if (at.equals(next)) {
      return;
    }
    at.ifPresent(left -> untaken.keep(left, pad.typed()));
    if (at.isPresent()) {
      pad.clear();
    }
    if (!shown.equals(units)) {
      units = shown;
      pad = padFor(units);
    }
    at = next;
    next.flatMap(untaken::find)
        .ifPresent(
            figure -> {
              figure.codePoints().forEach(each -> pad.type(Character.toString(each)));
              context.say("It was typed before, but not taken: " + figure + ".");
            });
  }

  @Override
  public void hidden() {
    at.ifPresent(here -> untaken.keep(here, pad.typed()));
  }

  @Override
  public void takeOver(Screen before) {
    if (before instanceof ReadingsScreen same) {
      model.goOn(same.model);
    }
  }

  /** The next part's tag: its readings by the same plan, or what can be measured on it. */
  @Override
  public void scan(Scanned scanned) {
    Tagged.find(context, scanned)
        .ifPresent(
            subject -> {
              String waits = pad.typed();
              context.navigator().back();
              context.navigator().open(() -> MeasureScreen.of(context, subject, model.plan()));
              if (!waits.isEmpty()) {
                context.say(waits + " was not taken. It waits at " + model.name() + ".");
              }
            });
  }

  private void came(String sentence) {
    if (!sentence.isEmpty()) {
      context.say(sentence);
    }
    if (model.station().isEmpty()) {
      pad.clear();
    } else if (!sentence.isEmpty()) {
      context.navigator().changed();
    } else if (model.questions().isEmpty()) {
      pad.clear();
    }
    context.navigator().changed();
  }

  @Override
  protected void refresh() {
    if (!model.questions().isEmpty()) {
      view.getChildren().setAll(question());
    } else if (model.tool().isEmpty()) {
      view.getChildren().setAll(tools.view());
    } else if (model.station().isPresent()) {
      view.getChildren().setAll(reading(model.station().get()));
    } else {
      turn(Optional.empty(), units);
      view.getChildren().setAll(result.view());
    }
  }

  /** The likely answer is the tag; what was typed is kept on purpose only. */
  private Region question() {
    String said =
        model.questions().stream().map(Question::sentence).collect(Collectors.joining(" "));
    Optional<String> meant = model.meant();
    TagKey tag = tag(() -> meant.ifPresentOrElse(figure -> takeMeant(), this::again));
    tag.setWords(
        meant.map(figure -> "It is " + figure).orElse("Type it again"),
        touch().brief(meant.isPresent() ? "" : "it was a slip", ""));
    List<KeyRow.Act> acts = new ArrayList<>();
    if (meant.isPresent()) {
      acts.add(act("Type it again", this::again));
    }
    acts.add(act("Keep it", () -> context.attempt(() -> came(model.confirm()))));
    return Panes.column(
        context.scale(),
        words.asked(said, model.eitherOr().orElse(said)),
        new Foot(context, tag, KeyRow.of(context, 1, acts)));
  }

  private void takeMeant() {
    context.attempt(() -> came(model.takeMeant()));
  }

  private boolean again() {
    model.drop();
    pad.clear();
    context.navigator().changed();
    return true;
  }

  private SizePad padFor(UnitChoice shown) {
    return new SizePad(touch(), context.state().units(), shown, model.plan().least() < 0);
  }

  private Region reading(Station station) {
    String plan = model.plan().key();
    String tool = model.tool().map(Tool::name).orElse("");
    turn(
        Optional.of(new UntakenFigures.At(model.subject(), plan, station.key(), tool)),
        station.units());
    TagKey tag = tag(this::enter);
    tag.setWords("Take it", "");
    List<KeyRow.Act> acts =
        ways(station).stream().map(way -> act(way.words(), way.value())).toList();
    return pad.with(words.told(station), tag, KeyRow.of(context, 1, acts));
  }

  /** What else can be done than taking the next reading. */
  private List<Choice<Runnable>> ways(Station station) {
    List<Choice<Runnable>> ways = new ArrayList<>();
    ways.add(new Choice<>(tools::zero, "Zero check", ""));
    String tool = model.tool().map(Tool::name).orElse("");
    ways.add(new Choice<>(tools::choose, "Tool: " + tool, ""));
    if (words.isLong(station)) {
      ways.add(new Choice<>(() -> words.readOn(station), "How to measure", ""));
    }
    model
        .lastRead()
        .ifPresent(last -> ways.add(new Choice<>(() -> repeat(last), "Repeat the last one", "")));
    return ways;
  }

  private void more() {
    model
        .station()
        .ifPresent(
            at -> open(() -> new ChoiceScreen<>(context, model.name(), ways(at), Runnable::run)));
  }

  private void repeat(Station station) {
    model.again(station);
    context.navigator().changed();
  }
}
