package wherefrom.ui.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.Question;
import wherefrom.inspection.measure.Station;
import wherefrom.inspection.measure.Tool;
import wherefrom.rules.Cue;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.Typable;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.VerdictCard;
import wherefrom.ui.subject.Tagged;

/** One size at a time: the spot to measure, a large pad, what was read; then what follows. */
public final class ReadingsScreen implements Screen, Typable, Scannable {
  private static final double PAD_MM = 120;

  private final Desk desk;
  private final ReadingsModel model;
  private final SizePad pad;
  private final StackPane view = Panes.grow(new StackPane());

  public ReadingsScreen(Desk desk, Subject subject, String plan) {
    this.desk = desk;
    model = new ReadingsModel(desk.getJob(), subject, plan);
    pad =
        new SizePad(
            desk.touch(),
            desk.state().units(),
            model.plan().stations().get(0).dimension(),
            model.plan().least() < 0);
    pad.setPrefWidth(desk.scale().px(PAD_MM));
  }

  @Override
  public String title() {
    return desk.touch().brief(model.title(), model.name());
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public void shown() {
    draw();
  }

  @Override
  public void changed() {
    draw();
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
  public void enter() {
    if (pad.isEmpty() || !model.questions().isEmpty()) {
      return;
    }
    desk.attempt(() -> came(model.enter(pad.typed())));
  }

  /** The next part's tag: its readings by the same plan, or what can be measured on it. */
  @Override
  public void scan(String text) {
    Tagged.find(desk, text)
        .ifPresent(
            subject -> {
              desk.navigator().back();
              desk.navigator().open(() -> MeasureScreen.of(desk, subject, model.plan()));
            });
  }

  private void came(String sentence) {
    if (!sentence.isEmpty()) {
      desk.say(sentence);
    }
    if (model.station().isEmpty()) {
      pad.clear();
    } else if (!sentence.isEmpty()) {
      desk.navigator().changed();
    } else if (model.questions().isEmpty()) {
      pad.clear();
    }
    desk.navigator().changed();
  }

  private void draw() {
    if (!model.questions().isEmpty()) {
      view.getChildren().setAll(question());
    } else if (model.tool().isEmpty()) {
      view.getChildren().setAll(withoutTool());
    } else if (model.station().isPresent()) {
      view.getChildren().setAll(reading(model.station().get()));
    } else {
      view.getChildren().setAll(result());
    }
  }

  private Region question() {
    Touch touch = desk.touch();
    VerdictCard card = new VerdictCard(touch);
    List<String> said = model.questions().stream().map(Question::sentence).toList();
    card.show(Cue.ASK, "Is that right?", List.of(), String.join(" ", said));
    List<Node> keys = new ArrayList<>();
    keys.add(touch.primary(touch.brief("A slip: type it again", "Type again"), this::again));
    model
        .meant()
        .ifPresent(
            figure ->
                keys.add(
                    touch.primary(
                        touch.brief("It is " + figure, figure),
                        () -> desk.attempt(() -> came(model.takeMeant())))));
    keys.add(
        touch.key(
            touch.brief("It is right: keep it", "Keep it"),
            () -> desk.attempt(() -> came(model.confirm()))));
    return Panes.column(desk.scale(), card, Tiles.row(desk.scale(), keys.toArray(Node[]::new)));
  }

  private void again() {
    model.drop();
    pad.clear();
    draw();
  }

  private Region withoutTool() {
    String words =
        model.tools().isEmpty()
            ? "Which tool do you measure with? List it once. Its step and its error decide"
                + " what its readings can tell."
            : "Which of your tools do you measure with?";
    return Panes.column(
        desk.scale(),
        Panes.grow(desk.touch().text(words)),
        Tiles.row(
            desk.scale(),
            desk.touch()
                .primary(
                    model.tools().isEmpty() ? "List a tool" : "Choose the tool",
                    this::chooseTool)));
  }

  private Region reading(Station station) {
    Touch touch = desk.touch();
    VBox told = new VBox(desk.scale().px(2));
    told.getChildren().add(touch.small(model.count()));
    told.getChildren().add(Panes.grow(touch.fit(station.words(), 10, 4.5, true)));
    if (!touch.isLarge() && !model.plan().how().isEmpty()) {
      told.getChildren().add(touch.small(model.plan().how()));
    }
    String before = model.read(station);
    if (!before.isEmpty()) {
      told.getChildren().add(touch.small("So far here: " + before));
    }
    if (model.zero().isEmpty() && !touch.isLarge()) {
      told.getChildren().add(touch.small("This tool's zero is not checked. Check it first."));
    }
    Region keys = keys();
    VBox side = Panes.grow(Panes.column(desk.scale(), Panes.grow(told), keys));
    return Panes.row(desk.scale(), pad, side);
  }

  private Region keys() {
    Touch touch = desk.touch();
    List<Node> keys = new ArrayList<>();
    keys.add(touch.primary("Take it", this::enter));
    if (touch.isLarge()) {
      keys.add(touch.key("More", this::more));
    } else {
      for (Choice<Runnable> way : ways()) {
        keys.add(touch.key(way.words(), way.value()));
      }
    }
    return Tiles.of(desk.scale(), 2, keys.toArray(Node[]::new));
  }

  /** What else can be done than taking the next reading. */
  private List<Choice<Runnable>> ways() {
    List<Choice<Runnable>> ways = new ArrayList<>();
    String tool = model.tool().map(Tool::name).orElse("");
    ways.add(new Choice<>(this::chooseTool, "Tool: " + tool, ""));
    ways.add(new Choice<>(this::zero, "Zero check", ""));
    model
        .lastRead()
        .ifPresent(last -> ways.add(new Choice<>(() -> repeat(last), "Repeat the last one", "")));
    return ways;
  }

  private void more() {
    desk.navigator().open(() -> new ChoiceScreen<>(desk, model.name(), ways(), Runnable::run));
  }

  private void repeat(Station station) {
    model.again(station);
    draw();
  }

  private void zero() {
    model.tool().ifPresent(tool -> ToolFlow.zero(desk, tool));
  }

  private void chooseTool() {
    if (model.tools().isEmpty()) {
      ToolFlow.list(desk, model.plan().stations().get(0).dimension());
      return;
    }
    List<Choice<Optional<Tool>>> choices = new ArrayList<>();
    for (Tool tool : model.tools()) {
      choices.add(new Choice<>(Optional.of(tool), tool.name(), ToolFlow.words(tool)));
    }
    choices.add(new Choice<>(Optional.empty(), "Another tool", "list it first"));
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Which tool?", choices, this::chosen));
  }

  private void chosen(Optional<Tool> tool) {
    if (tool.isPresent()) {
      model.choose(tool.get());
    } else {
      ToolFlow.list(desk, model.plan().stations().get(0).dimension());
    }
    desk.navigator().changed();
  }

  private Region result() {
    Touch touch = desk.touch();
    Pager<ResultLines.Line> lines =
        Pager.list(touch, line -> ListRow.plain(touch, line.heading(), List.of(line.words())));
    model.result().ifPresent(result -> lines.setItems(ResultLines.of(desk.getJob(), result)));
    List<Node> keys = new ArrayList<>();
    keys.add(touch.key("Type a limit", () -> LimitFlow.ask(desk, model.plan())));
    keys.add(touch.key("Read one again", this::readOneAgain));
    keys.add(touch.key("Measure again", this::anew));
    keys.add(touch.key("Compare the set", this::compare));
    next().ifPresent(subject -> keys.add(touch.primary("Next one", () -> goOn(subject))));
    return Panes.column(desk.scale(), lines, Tiles.of(desk.scale(), 5, keys.toArray(Node[]::new)));
  }

  private void readOneAgain() {
    List<Choice<Station>> stations =
        model.plan().stations().stream()
            .map(station -> new Choice<>(station, station.words(), model.read(station)))
            .toList();
    desk.navigator().open(() -> new ChoiceScreen<>(desk, "Which one?", stations, this::repeat));
  }

  private void anew() {
    model.startAnew();
    draw();
  }

  private void compare() {
    desk.navigator().open(() -> new CompareScreen(desk, model.plan()));
  }

  private Optional<Subject> next() {
    return new MeasureModel(desk.getJob()).next(model.plan(), model.subject());
  }

  private void goOn(Subject subject) {
    desk.navigator().back();
    desk.navigator().open(() -> new ReadingsScreen(desk, subject, model.plan().key()));
  }
}
