package wherefrom.ui.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import wherefrom.inspection.Check;
import wherefrom.inspection.Look;
import wherefrom.inspection.Subject;
import wherefrom.job.StandingRule;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.changes.FollowsScreen;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.measure.ReadingsScreen;
import wherefrom.ui.photos.PhotoScreen;
import wherefrom.ui.photos.PhotoTaking;
import wherefrom.ui.sketches.SketchView;
import wherefrom.ui.subject.Tagged;

/** One quick test: where to look, what is good and what is bad, and the three answers. */
public final class CardScreen extends Page implements Scannable {
  /** A longer note is read whole behind the key Note: the drawing keeps its room. */
  private static final int NOTE_LINES = 3;

  private final LookCardModel model;
  private final StackPane view = Panes.grow(new StackPane());
  private final KeyRow keys;
  private final VBox card;

  /** So many letters below the drawing leave it its room; a longer hint is behind the key More. */
  private static final int MOST_SAID = 110;

  /**
   * @param round what is looked at one after the other; empty where one alone is
   */
  public CardScreen(ScreenContext context, Subject subject, List<Subject> round) {
    super(context, "");
    model = new LookCardModel(context.getJob(), subject, round);
    keys = KeyRow.of(context);
    card = Panes.column(context.scale());
    lay(view);
  }

  @Override
  public String title() {
    return model.title();
  }

  /** Which test it is, and what was answered; beside large letters what was answered has room. */
  @Override
  public String aside() {
    Look look = model.card().look();
    return look == Look.NOT_LOOKED
        ? model.count()
        : touch().brief(model.count() + ": " + look.word(), look.word());
  }

  @Override
  public void scan(Scanned scanned) {
    Tagged.find(context, scanned).ifPresent(model::turnTo);
  }

  @Override
  protected void refresh() {
    Check check = model.card().check();
    if (touch().isLarge()) {
      view.getChildren().setAll(brief(check));
    } else {
      showAtOnce(check);
    }
  }

  /** The keys below stay where they are: one of them may be under a finger. */
  private void showAtOnce(Check check) {
    List<KeyRow.Act> acts = new ArrayList<>(ways());
    acts.add(act("More", this::more));
    keys.setActs(acts);
    Split both = atOnce(check);
    if (view.getChildren().contains(card)) {
      card.getChildren().set(0, both);
    } else {
      card.getChildren().setAll(both, keys);
      view.getChildren().setAll(card);
    }
  }

  /** Large letters: the drawing, and the answers behind the tag. */
  private Region brief(Check check) {
    TagKey tag = tag(() -> answers(check));
    tag.setWords("Answer", "");
    List<KeyRow.Act> acts = new ArrayList<>();
    acts.addAll(ways());
    acts.addAll(further());
    return Panes.column(
        context.scale(),
        touch().heading(check.title()),
        new SketchView(touch(), check),
        new Foot(context, tag, KeyRow.of(context, 1, acts)));
  }

  private void answers(Check check) {
    List<Choice<Look>> choices =
        List.of(
            new Choice<>(Look.PASS, "Pass", check.pass()),
            new Choice<>(Look.SUSPECT, "Suspect", check.suspect()),
            new Choice<>(Look.FAIL, "Fail", check.fail()),
            new Choice<>(Look.NOT_LOOKED, "Not looked at", ""));
    open(() -> ChoiceScreen.atOnce(context, check.title(), choices, this::offer));
  }

  private Split atOnce(Check check) {
    VBox answers = new AnswerKeys(touch(), model.card().look(), this::offer).of(check);
    return new Split(context.scale(), words(check), answers);
  }

  private Region words(Check check) {
    VBox words = new VBox(context.scale().px(1));
    words
        .getChildren()
        .addAll(
            touch().heading(check.title()),
            new SketchView(touch(), check),
            touch().small(check.how()));
    String note = model.card().note();
    model
        .hint()
        .filter(hint -> check.how().length() + note.length() + hint.length() <= MOST_SAID)
        .ifPresent(hint -> words.getChildren().add(touch().small("Hint: " + hint)));
    if (!note.isEmpty()) {
      words.getChildren().add(touch().small("Note: " + note).upTo(NOTE_LINES));
    }
    return words;
  }

  /** The same keys on every card, so that none moves from test to test. */
  private List<KeyRow.Act> ways() {
    return List.of(
        act("Measure", this::measure),
        act("Note", this::note),
        act("Photo", this::photo),
        act("Next", this::next));
  }

  /** What is wanted seldom, or not on every card. */
  private List<KeyRow.Act> further() {
    List<KeyRow.Act> acts =
        new ArrayList<>(List.of(act("Previous test", this::before), act("Source", this::readOn)));
    List<String> hints = model.hints();
    if (!hints.isEmpty()) {
      acts.add(act("Hints: " + hints.size(), () -> read(hints)));
    }
    if (!model.photos().isEmpty()) {
      acts.add(act("Photos: " + model.photos().size(), () -> open(0)));
    }
    if (model.card().look() != Look.NOT_LOOKED) {
      acts.add(act("No answer", () -> offer(Look.NOT_LOOKED)));
    }
    return acts;
  }

  private void more() {
    List<Choice<KeyRow.Act>> choices =
        further().stream().map(act -> new Choice<>(act, act.words(), "")).toList();
    open(() -> new ChoiceScreen<>(context, model.title(), choices, act -> act.run().run()));
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
    context.navigator().open(() -> new ChoiceScreen<>(context, question, choices, done));
  }

  private void answer(Look look) {
    Subject before = model.subject();
    String cause = model.title() + ": " + look.word();
    context.attempt(
        () -> {
          String refused = model.answer(look);
          boolean more = model.goOn();
          String last = "That was the last test of " + model.title() + ". Scan the next part.";
          String said = more ? model.said() : last;
          boolean told = !model.followed().isEmpty() && model.subject().equals(before);
          context.say(refused.isEmpty() ? (told ? "" : said) : refused);
        });
    context.navigator().changed();
    List<StandingRule> followed = model.followed();
    if (!followed.isEmpty()) {
      open(() -> new FollowsScreen(context, cause, followed));
    }
  }

  private void next() {
    if (!model.next()) {
      context.say("That is the last test of " + model.title() + ".");
    }
    context.navigator().changed();
  }

  private void before() {
    if (model.isFirst()) {
      context.say("That is the first test of " + model.title() + ".");
    }
    model.before();
    context.navigator().changed();
  }

  private void note() {
    context
        .navigator()
        .open(
            () ->
                new TextEntryScreen(
                    context, "Note: " + model.title(), model.card().note(), this::keepNote));
  }

  private void keepNote(String words) {
    context.attempt(
        () -> {
          String said = model.note(words);
          if (!said.isEmpty()) {
            context.say(said);
          }
        });
    context.navigator().changed();
  }

  private void photo() {
    PhotoTaking.ask(context, Optional.of(model.subject()), model.card().check().key());
  }

  private void open(int number) {
    context.navigator().open(() -> new PhotoScreen(context, model::photos, number));
  }

  /** What settles this test; where no reading does, all that can be measured here. */
  private void measure() {
    model
        .plan()
        .ifPresentOrElse(
            plan -> open(() -> new ReadingsScreen(context, model.subject(), plan.key())),
            this::measureAny);
  }

  private void measureAny() {
    if (model.subject() instanceof Subject.APart part) {
      context.navigator().show(ScreenId.MEASURE, part.item());
    } else {
      context.say("No reading settles this test. Look closely, or ask someone who knows.");
    }
  }

  private void read(List<String> hints) {
    List<WordsScreen.Paragraph> lines =
        hints.stream().map(hint -> new WordsScreen.Paragraph("Before teardown", hint)).toList();
    open(() -> new WordsScreen(context, model.title(), lines));
  }

  private void readOn() {
    Check check = model.card().check();
    List<WordsScreen.Paragraph> words =
        touch().isLarge() ? QuickTestWords.of(check) : QuickTestWords.beyond(check);
    context.navigator().open(() -> new WordsScreen(context, check.title(), words));
  }
}
