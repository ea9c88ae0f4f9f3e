package wherefrom.ui.torque;

import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.parts.Action;
import wherefrom.rules.Cue;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.AnswerCard;
import wherefrom.ui.controls.Fold;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** A torque card at work: the bolt in turn in large words and lit among the others. */
public final class TorqueCardScreen extends Page implements Scannable {
  private static final String WANTED = "Scan NEXT for the bolt in turn, UNDO to undo it.";

  private final Touch touch;
  private final int number;
  private final TorqueCardModel model;
  private final AnswerCard words;
  private final BoltGrid grid;
  private final Fold fold;
  private final VBox foot = new VBox();
  private boolean asked;

  TorqueCardScreen(ScreenContext context, int number) {
    super(context, "");
    this.touch = context.touch();
    this.number = number;
    model = new TorqueCardModel(context.getJob(), number, context.nanos());
    words = new AnswerCard(touch, Scale.WORKING_MM);
    grid =
        new BoltGrid(
            touch,
            model.card().spec().pattern().rows(),
            model.card().spec().pattern().columns(),
            model::face,
            position -> model.boltAt(position).ifPresent(this::touched));
    fold = new Fold(touch, words, grid, "Show the bolts");
    lay(Panes.column(context.scale(), fold, foot));
  }

  private void touched(int bolt) {
    withPerson(() -> answer(model.tick(bolt)));
  }

  private void done() {
    withPerson(() -> answer(model.done()));
  }

  /** Asks once who works, then goes on. */
  private void withPerson(Runnable deed) {
    if (model.wantsPerson()) {
      ask(deed);
    } else {
      context.attempt(deed::run);
      context.navigator().changed();
    }
  }

  private void ask(Runnable then) {
    String title = model.isCheck() ? "The second person's name" : "Your name or initials";
    open(
        () ->
            new TextEntryScreen(
                context,
                title,
                "",
                typed -> {
                  model.person(typed);
                  if (!typed.isBlank()) {
                    context.attempt(then::run);
                  }
                  context.navigator().changed();
                }));
  }

  private void answer(Optional<Cue> cue) {
    cue.ifPresent(context.sounds()::play);
  }

  @Override
  protected void refresh() {
    if (!model.isThere()) {
      context.navigator().back();
      return;
    }
    words.show(model.answer(touch.isLarge()));
    grid.draw();
    boolean asks = model.question().isPresent();
    if (asks && !asked) {
      // Who touched a bolt sees the bolts: the question would stand unread behind them.
      fold.showWords();
    }
    asked = asks;
    foot.getChildren().setAll(keys());
  }

  private Region keys() {
    if (model.question().isPresent()) {
      String due = "Bolt " + model.question().get().due().number();
      String asked = "Bolt " + model.question().get().bolt().number();
      return new Foot(
          context,
          touch.tag(due + " is next", "", this::dismiss),
          KeyRow.of(context, new KeyRow.Act(asked + " was done", this::confirm)));
    }
    KeyRow.Act card = new KeyRow.Act("The card", this::details);
    if (model.kept().isDone()) {
      return KeyRow.of(context, card);
    }
    String person = model.person().isEmpty() ? "?" : model.person().replace(' ', '\u00a0');
    int bolt = model.card().findDue("").orElseThrow().bolt();
    return new Foot(
        context,
        touch.tag("Bolt " + bolt + (model.isCheck() ? " checked" : " done"), "", this::done),
        KeyRow.of(context, new KeyRow.Act("Who: " + person, () -> ask(() -> {})), card));
  }

  private void dismiss() {
    model.dismiss();
    refresh();
  }

  private void confirm() {
    context.attempt(() -> answer(model.confirm()));
    context.navigator().changed();
  }

  private void details() {
    open(() -> new CardDetailsScreen(context, number));
  }

  @Override
  public boolean takes(Action card) {
    return card == Action.NEXT || (card != Action.HELP && !model.wantsPerson());
  }

  @Override
  public void scan(Scanned scanned) {
    if (model.wantsPerson()) {
      context.say("Press Who and enter your name.");
      return;
    }
    answer(model.scan(scanned.getFound()));
    model.takeRefused().ifPresent(found -> context.refuse(found, WANTED));
  }

  @Override
  public String undoes(ScreenContext over) {
    return model.undoes();
  }

  @Override
  public void undo(ScreenContext over) {
    over.attempt(model::undo);
    over.navigator().changed();
  }

  @Override
  public String title() {
    return model.title();
  }
}
