package wherefrom.ui.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Check;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.rules.Cue;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.controls.CueMark;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.Touch;
import wherefrom.ui.controls.TouchKey;
import wherefrom.ui.measure.ReadingsScreen;
import wherefrom.ui.photos.PhotoLoader;
import wherefrom.ui.photos.PhotoScreen;
import wherefrom.ui.photos.PhotoStrip;
import wherefrom.ui.photos.PhotoTaking;
import wherefrom.ui.subject.Tagged;

/** One quick test: where to look, what is good and what is bad, and the three answers. */
public final class CardScreen implements Screen, Scannable {
  private static final double MARK_MM = 10;
  private static final int PHOTOS = 3;

  private final Desk desk;
  private final CardModel model;
  private final PhotoLoader loader;
  private final StackPane view = Panes.grow(new StackPane());
  private boolean answering;

  /**
   * @param round what is looked at one after the other; empty where one alone is
   */
  public CardScreen(Desk desk, Subject subject, List<Subject> round) {
    this.desk = desk;
    model = new CardModel(desk.getJob(), subject, round);
    loader = new PhotoLoader(desk);
  }

  @Override
  public String title() {
    return model.title();
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
  public void scan(String text) {
    Tagged.find(desk, text).ifPresent(model::turnTo);
    answering = false;
  }

  @Override
  public void undo(Desk from) {
    model.forget();
    from.takeBack();
  }

  private void draw() {
    Touch touch = desk.touch();
    Check check = model.card().check();
    Region drawing = new SketchView(touch, check);
    if (!touch.isLarge()) {
      Region words = words(check);
      VBox told = Panes.grow(Panes.column(desk.scale(), words));
      drawing.setPrefWidth(10);
      told.setPrefWidth(10);
      view.getChildren()
          .setAll(
              Panes.column(
                  desk.scale(),
                  Panes.grow(Panes.row(desk.scale(), drawing, told)),
                  Tiles.row(desk.scale(), answers(check)),
                  keys()));
    } else if (answering) {
      view.getChildren()
          .setAll(
              Panes.column(
                  desk.scale(),
                  Panes.grow(Tiles.of(desk.scale(), 1, answers(check))),
                  Tiles.row(
                      desk.scale(),
                      desk.touch().key("Show where", () -> answering(false)),
                      desk.touch().key("Not looked at", () -> offer(Look.NOT_LOOKED)))));
    } else {
      view.getChildren()
          .setAll(Panes.column(desk.scale(), touch.heading(check.title()), drawing, keys()));
    }
  }

  private void answering(boolean now) {
    answering = now;
    draw();
  }

  private Region words(Check check) {
    Touch touch = desk.touch();
    List<Node> lines = new ArrayList<>();
    if (!model.said().isEmpty()) {
      lines.add(touch.small(model.said()));
    }
    lines.add(touch.small(model.count() + ": " + model.card().look().word()));
    lines.add(touch.heading(check.title()));
    lines.add(touch.text(check.how()));
    lines.add(touch.small("Where: " + check.where()));
    String note = model.card().note();
    if (!note.isEmpty()) {
      lines.add(touch.small("Note: " + note));
    }
    lines.add(Panes.space());
    // One row: the first ones, from which the others are turned to.
    PhotoStrip.rows(desk, loader, model::photos, PHOTOS).stream().limit(1).forEach(lines::add);
    lines.add(touch.small("Source: " + check.source()));
    return Panes.grow(new VBox(desk.scale().px(2), lines.toArray(Node[]::new)));
  }

  private Node[] answers(Check check) {
    return new Node[] {
      key(Cue.RIGHT, "Pass", check.pass(), Look.PASS),
      key(Cue.ASK, "Suspect", check.suspect(), Look.SUSPECT),
      key(Cue.STOP, "Fail", check.fail(), Look.FAIL)
    };
  }

  private TouchKey key(Cue cue, String word, String words, Look look) {
    boolean chosen = model.card().look() == look;
    String all = word + desk.touch().brief("\n", ": ") + words;
    TouchKey key = desk.touch().primary(all, () -> offer(look)).select(chosen);
    // A chosen key is dark, and so are the figures.
    return desk.touch().isLarge() || chosen
        ? key
        : key.draw(CueMark.of(cue, desk.scale().px(MARK_MM)));
  }

  private Region keys() {
    Touch touch = desk.touch();
    List<Node> keys = new ArrayList<>();
    if (touch.isLarge()) {
      keys.add(touch.primary("Answer", () -> answering(true)));
      keys.add(touch.key("Read on", this::readOn));
      keys.add(touch.key("More", this::more));
      return Tiles.row(desk.scale(), keys.toArray(Node[]::new));
    }
    keys.add(touch.key("Not looked at", () -> offer(Look.NOT_LOOKED)));
    if (!model.card().check().printed().isEmpty()) {
      keys.add(touch.key("Printed figures", this::readOn));
    }
    for (Choice<Runnable> way : ways()) {
      keys.add(touch.key(way.words(), way.value()));
    }
    return Tiles.of(desk.scale(), 7, keys.toArray(Node[]::new));
  }

  /** What else can be done with a card than answering it. */
  private List<Choice<Runnable>> ways() {
    List<Choice<Runnable>> ways = new ArrayList<>();
    ways.add(new Choice<>(this::note, "Note", ""));
    ways.add(new Choice<>(this::photo, "Photo", ""));
    if (desk.touch().isLarge() && !model.photos().isEmpty()) {
      ways.add(new Choice<>(() -> open(0), "See its photos: " + model.photos().size(), ""));
    }
    model
        .plan()
        .ifPresent(plan -> ways.add(new Choice<>(() -> measure(plan.key()), "Measure", "")));
    if (!model.isFirst()) {
      ways.add(new Choice<>(this::before, "Test before", ""));
    }
    if (!model.isLast() || model.following().isPresent()) {
      ways.add(new Choice<>(this::next, "Next", ""));
    }
    return ways;
  }

  private void more() {
    desk.navigator().open(() -> new ChoiceScreen<>(desk, model.title(), ways(), Runnable::run));
  }

  /** One touch beside its mark must not hide a finding. */
  private void offer(Look look) {
    model.question(look).ifPresentOrElse(question -> ask(question, look), () -> answer(look));
  }

  private void ask(String question, Look look) {
    String word = model.card().look().word();
    String note = model.card().note();
    List<Choice<Boolean>> choices =
        List.of(
            new Choice<>(false, "NO: it stays " + word, note.isEmpty() ? "" : "Note: " + note),
            new Choice<>(true, "YES: " + look.word(), ""));
    Consumer<Boolean> done =
        yes -> {
          if (yes) {
            answer(look);
          }
        };
    desk.navigator().open(() -> new ChoiceScreen<>(desk, question, choices, done));
  }

  private void answer(Look look) {
    desk.attempt(
        () -> {
          String follows = model.answer(look);
          if (!follows.isEmpty()) {
            desk.say(follows);
          }
          if (!model.goOn()) {
            desk.say("That was the last test of " + model.title() + ". Scan the next part.");
          }
        });
    answering = false;
    desk.navigator().changed();
  }

  private void next() {
    model.next();
    answering = false;
    desk.navigator().changed();
  }

  private void before() {
    model.before();
    desk.navigator().changed();
  }

  private void note() {
    desk.navigator()
        .open(
            () ->
                new TextEntryScreen(
                    desk, "Note: " + model.title(), model.card().note(), this::keepNote));
  }

  private void keepNote(String words) {
    desk.attempt(() -> model.note(words));
    desk.navigator().changed();
  }

  private void photo() {
    PhotoTaking.ask(desk, Optional.of(model.subject()), model.card().check().key());
  }

  private void open(int number) {
    desk.navigator().open(() -> new PhotoScreen(desk, model::photos, number));
  }

  private void measure(String plan) {
    desk.navigator().open(() -> new ReadingsScreen(desk, model.subject(), plan));
  }

  private void readOn() {
    Check check = model.card().check();
    desk.navigator().open(() -> new WordsScreen(desk, check.title(), CheckWords.of(check)));
  }
}
