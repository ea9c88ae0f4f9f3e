package wherefrom.ui.changes;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import javafx.scene.layout.Region;
import wherefrom.job.change.PlannedChange;
import wherefrom.rules.consequence.Change;
import wherefrom.rules.consequence.Consequence;
import wherefrom.rules.consequence.Effect;
import wherefrom.text.Words;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.controls.TagKey;

/** One change with all that follows from it, before anything is recorded, planned, or done. */
public final class ChangeScreen extends ListPage {
  /** How far a change has got. */
  private enum Standing {
    FRESH("not recorded yet"),
    PLANNED("only a plan"),
    MADE("recorded");

    private final String words;

    Standing(String words) {
      this.words = words;
    }
  }

  private final Change change;
  private final ChangesModel model;
  private final Standing standing;
  private boolean offersWork;

  private ChangeScreen(ScreenContext context, Change change, Standing standing) {
    super(context, title(context, change, standing));
    this.change = change;
    this.standing = standing;
    model = new ChangesModel(context.getJob());
  }

  /** Large letters leave nothing beside the title: it says itself that it is a plan only. */
  private static String title(ScreenContext context, Change change, Standing standing) {
    String whole = Words.capital(change.words());
    return standing == Standing.PLANNED
        ? context.touch().brief(whole, "Plan: " + change.words())
        : whole;
  }

  /** A change that nothing is recorded of yet. */
  public static ChangeScreen fresh(ScreenContext context, Change change) {
    ChangeScreen screen = new ChangeScreen(context, change, Standing.FRESH);
    if (ChangesModel.isFinding(change)) {
      screen.offer("Record it", "this then follows", model -> model.make(change));
    } else {
      screen.offer(
          "Plan it",
          "only a plan: nothing is stopped yet",
          model -> model.plan(change),
          screen.act("Mark as done", model -> model.make(change)));
    }
    return screen;
  }

  public static ChangeScreen planned(ScreenContext context, PlannedChange plan) {
    ChangeScreen screen = new ChangeScreen(context, plan.change(), Standing.PLANNED);
    screen.offer(
        "Mark as done",
        "all this then follows",
        model -> model.carryOut(plan.number()),
        screen.act(
            screen.touch().brief("Drop the plan", "Drop it"), model -> model.drop(plan.number())));
    return screen;
  }

  /** A change that was recorded. */
  public static ChangeScreen made(ScreenContext context, Change change) {
    return new ChangeScreen(context, change, Standing.MADE);
  }

  private KeyRow.Act act(String words, Function<ChangesModel, String> deed) {
    return act(words, () -> does(deed));
  }

  private void offer(
      String words, String more, Function<ChangesModel, String> deed, KeyRow.Act... others) {
    offersWork = true;
    TagKey tag = tag(() -> does(deed));
    tag.setWords(words, touch().brief(more, ""));
    layOut(new Foot(context, tag, KeyRow.of(context, others)));
  }

  private void does(Function<ChangesModel, String> deed) {
    if (context.attempt(() -> context.say(deed.apply(model)))) {
      context.navigator().back();
    }
    context.navigator().changed();
  }

  /** Leaving writes nothing down, which is said. */
  @Override
  public boolean escape() {
    if (standing == Standing.FRESH) {
      context.say("Not recorded: " + Words.small(title()) + ".");
    }
    return false;
  }

  @Override
  public String aside() {
    return standing.words;
  }

  @Override
  protected String whenEmpty() {
    return "Nothing follows. No rule covers it here.";
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    if (offersWork) {
      model
          .findContradiction(change)
          .ifPresent(words -> rows.add(whole("Another plan contradicts it", words)));
    }
    List<Consequence> all = model.preview(change);
    all.stream().filter(ChangeScreen::isHard).forEach(one -> rows.add(RuleRows.of(context, one)));
    model.cost(change).ifPresent(words -> rows.add(whole(costs(all), words)));
    all.stream().filter(one -> !isHard(one)).forEach(one -> rows.add(RuleRows.of(context, one)));
    return rows;
  }

  private static String costs(List<Consequence> all) {
    return all.stream().anyMatch(one -> one.effect() == Effect.WORK) ? "To pay for" : "To buy";
  }

  /** What is no check: it stands before what it costs. */
  private static boolean isHard(Consequence consequence) {
    return consequence.effect().compareTo(Effect.CHECK_FIRST) < 0;
  }

  /** A row that is short, and tells all of it when it is pressed. */
  private Region whole(String heading, String words) {
    List<WordsScreen.Paragraph> lines = List.of(new WordsScreen.Paragraph(heading, words));
    String first = Words.firstSentence(words);
    return key(
        touch().brief(heading, heading + ": " + Words.withoutStop(first)),
        touch().brief(first, ""),
        () -> open(() -> new WordsScreen(context, title(), lines)));
  }
}
