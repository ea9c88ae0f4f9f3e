package wherefrom.ui.running;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import wherefrom.job.Caution;
import wherefrom.job.entry.RunInGauge;
import wherefrom.job.running.RunIn;
import wherefrom.job.running.RunInBook;
import wherefrom.rules.Cue;
import wherefrom.ui.app.CautionScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.CueMark;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.controls.Ticker;
import wherefrom.ui.controls.Tiles;

/**
 * The run-in's clock, to be read across the bench; the gauges; the key that is pressed once it is
 * stopped.
 */
public final class RunInScreen extends Page {
  private static final long SECOND_MS = 1_000;
  private static final String STOP = "stop";

  /** What the clock stands on while the gauges ask for the ignition off. */
  private static final String ALARM = "card-stop";

  /** Around the words on that ground. */
  private static final double RIM_MM = 2.4;

  /** As large as the glass has room for. */
  private static final double CLOCK_MM = 42;

  private static final double TAG_MM = 34;

  /** Beside STOP. */
  private static final double OCTAGON_MM = 20;

  private final FitText clock;
  private final FitText caption;
  private final Node octagon;
  private final VBox board;
  private final Tiles gauges;
  private final TagKey tag;
  private final KeyRow keys;
  private Optional<Ticker.Ticking> ticking = Optional.empty();

  /** A run-in was begun. */
  public RunInScreen(ScreenContext context) {
    super(context, "Run-in");
    double least = Scale.LEAST_VERDICT_MM / context.scale().textFactor();
    clock = touch().fit("0:00", CLOCK_MM, least, true).centred();
    caption = touch().text("").centred();
    octagon = CueMark.of(Cue.STOP, context.scale().px(OCTAGON_MM));
    HBox large = Panes.grow(Panes.row(context.scale(), octagon, clock));
    large.setAlignment(Pos.CENTER);
    board = Panes.grow(Panes.pad(new VBox(large, caption), RIM_MM, context.scale()));
    gauges = Tiles.row(context.scale());
    tag = tag(this::press);
    keys = KeyRow.of(context);
    Foot foot = new Foot(context, tag, keys);
    foot.setPrefHeight(context.scale().px(TAG_MM));
    lay(Panes.column(context.scale(), board, gauges, foot));
  }

  /** Goes to the clock; where it is up already it is not laid on itself. */
  static void comeUp(ScreenContext context) {
    if (context.navigator().current() instanceof RunInScreen) {
      context.navigator().changed();
    } else {
      context.navigator().show(ScreenId.RUN_IN);
    }
  }

  private Optional<RunInModel> findModel() {
    return RunInModel.find(context.getJob(), context.services().clock());
  }

  @Override
  public void shown() {
    rest();
    if (findModel().isPresent()) {
      ticking = Optional.of(Ticker.WINDOW.repeat(SECOND_MS, this::tick));
    }
    super.shown();
  }

  private void tick() {
    findModel().ifPresent(this::tell);
  }

  /** Its begin was taken back: there is no clock any more, but it may begin again. */
  private void leave() {
    rest();
    context.navigator().back();
    if (!(context.navigator().current() instanceof RunInPlanScreen)) {
      open(() -> new RunInPlanScreen(context));
    }
    context.say("The run-in was taken back.");
  }

  @Override
  public void hidden() {
    context.sounds().hush();
    rest();
  }

  private void rest() {
    ticking.ifPresent(Ticker.Ticking::end);
    ticking = Optional.empty();
  }

  /** Says what the time is; nothing else changes by itself but the key, once it is up. */
  private void tell(RunInModel model) {
    clock.setWords(model.large());
    caption.setWords(model.caption(touch().isLarge()));
    List<Node> rows =
        List.of(gauge(model, RunInGauge.OIL_PRESSURE), gauge(model, RunInGauge.COOLANT));
    if (!said(rows).equals(said(gauges.getChildrenUnmodifiable()))) {
      gauges.setCells(rows, rows.size());
    }
    dress(model);
  }

  private static List<String> said(List<Node> rows) {
    return rows.stream().map(Node::getAccessibleText).toList();
  }

  private Node gauge(RunInModel model, RunInGauge gauge) {
    List<String> since = touch().isLarge() ? List.of() : List.of(model.since(gauge));
    return ListRow.key(touch(), model.gauge(gauge, touch().isLarge()), since, () -> note(gauge));
  }

  private void dress(RunInModel model) {
    boolean alarmed = model.alarm().isPresent();
    boolean stops = model.state() == RunIn.State.RUNNING && (alarmed || !model.isTimeUp());
    dress(tag, STOP, stops);
    dress(board, ALARM, alarmed);
    octagon.setVisible(alarmed);
    octagon.setManaged(alarmed);
    String words =
        switch (model.state()) {
          case RUNNING ->
              !stops ? "Engine is off" : alarmed ? "Ignition off" : "STOP: ignition off";
          case STOPPED ->
              model.isFaulty() && putRight(model).isEmpty()
                  ? "Say what was put right"
                  : "Engine is running again";
          case DONE -> "After the run-in";
        };
    if (!tag.words().equals(words)) {
      tag.setWords(words, stops ? "then press here" : putRightFirst(model));
    }
  }

  private static void dress(Node node, String styleClass, boolean dressed) {
    node.getStyleClass().remove(styleClass);
    if (dressed) {
      node.getStyleClass().add(styleClass);
    }
  }

  private String putRightFirst(RunInModel model) {
    String said = putRight(model);
    return !model.isFaulty() ? "" : said.isEmpty() ? "then it may run" : "put right: " + said;
  }

  private String putRight(RunInModel model) {
    return PutRight.of(context.kept()).words(model.findStop());
  }

  @Override
  protected void refresh() {
    findModel().ifPresentOrElse(this::refresh, this::leave);
  }

  private void refresh(RunInModel model) {
    tell(model);
    keys.setActs(
        model.state() == RunIn.State.RUNNING
            ? List.of(cautions())
            : List.of(
                act("Run in again", () -> open(() -> new RunInPlanScreen(context))), cautions()));
  }

  private KeyRow.Act cautions() {
    return act("Cautions", () -> open(() -> new CautionScreen(context, Caution.atRunIn())));
  }

  private void note(RunInGauge gauge) {
    if (findModel().filter(model -> model.state() == RunIn.State.RUNNING).isEmpty()) {
      context.say("A gauge is noted while the engine runs in.");
      return;
    }
    new RunInAsking(context).note(gauge);
  }

  private void press() {
    findModel().ifPresentOrElse(this::press, this::leave);
  }

  private void press(RunInModel model) {
    switch (model.state()) {
      case RUNNING -> new RunInAsking(context).stop();
      case STOPPED -> takeUp(model);
      case DONE -> context.navigator().show(ScreenId.SERVICE);
    }
  }

  /** After a fault it is said first what was put right; the clock begins when the engine runs. */
  private void takeUp(RunInModel model) {
    RunInBook book = new RunInBook(context.getJob());
    if (model.isFaulty() && putRight(model).isEmpty()) {
      open(() -> new TextEntryScreen(context, "What was put right?", "", this::say));
    } else {
      context.perform(() -> book.takeUp(putRight(model)));
    }
  }

  private void say(String words) {
    if (words.isBlank()) {
      throw new IllegalArgumentException("Say what was put right before it runs again.");
    }
    findModel()
        .flatMap(RunInModel::findStop)
        .ifPresent(stop -> PutRight.of(context.kept()).say(stop, words));
    context.navigator().changed();
  }
}
