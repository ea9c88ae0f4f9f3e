package wherefrom.ui.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import wherefrom.inspection.Decision;
import wherefrom.inspection.Subject;
import wherefrom.inspection.measure.ReadingPlan;
import wherefrom.job.decide.Settlement;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.Scannable;
import wherefrom.ui.app.Scanned;
import wherefrom.ui.app.ScannedPart;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.WordsScreen;
import wherefrom.ui.controls.TagKey;
import wherefrom.ui.measure.MeasureScreen;
import wherefrom.ui.subject.SubjectPictures;

/** One part: what is proposed and why; the person presses one of three keys and says why. */
public final class DecidePartScreen extends ListPage implements Scannable {
  private static final String NOT_MEASURED = "looked at, not measured";

  private final int item;
  private final boolean once;
  private final DecidePartModel model;
  private final TagKey tag;
  private final KeyRow keys;
  private Runnable first = () -> {};

  /**
   * @param item the part's number, which must be one of the open job's
   */
  public DecidePartScreen(ScreenContext context, int item) {
    this(context, item, false);
  }

  /** Goes back once it is decided, to where the decision was wanted. */
  public static DecidePartScreen once(ScreenContext context, int item) {
    return new DecidePartScreen(context, item, true);
  }

  private DecidePartScreen(ScreenContext context, int item, boolean once) {
    super(context, "");
    this.once = once;
    this.item = item;
    model = new DecidePartModel(context.getJob(), item);
    tag = tag(() -> first.run());
    keys = KeyRow.of(context);
    Place home = context.state().getPart(item).part().home();
    layOutWith(SubjectPictures.large(context, home), new Foot(context, tag, keys));
  }

  @Override
  public String title() {
    return "Decide: " + model.title();
  }

  @Override
  public Object identity() {
    return item;
  }

  @Override
  public String aside() {
    return model.standing();
  }

  @Override
  protected void refresh() {
    super.refresh();
    Optional<Decision> proposed = model.proposed();
    DecideModel all = new DecideModel(context.getJob());
    Optional<Part> next = all.next(item);
    if (model.decision().isPresent() && next.isPresent()) {
      turn("Next: " + all.title(next.get()), "", () -> goOn(next.get().item()));
    } else if (model.decision().isEmpty() && proposed.isPresent()) {
      String word = Words.capital(proposed.get().word());
      turn(word, "proposed", () -> ask(proposed.get()));
    } else {
      settle(model.settling());
    }
    List<KeyRow.Act> acts = new ArrayList<>();
    for (Decision decision : Decision.values()) {
      acts.add(act(Words.capital(decision.word()), () -> ask(decision)));
    }
    acts.add(act("Part page", () -> context.navigator().show(ScreenId.PART, item)));
    keys.setActs(acts);
  }

  /** The tag leads to what would settle it: what is answered already is not asked again. */
  private void settle(Settlement settling) {
    String what = settling.plan().map(ReadingPlan::title).orElse("");
    Runnable measure = () -> measure(settling.plan());
    switch (settling.way()) {
      case INSPECT ->
          turn("Inspect it", "", () -> context.navigator().show(ScreenId.INSPECT, item));
      case MEASURE -> turn("Measure it", what, measure);
      case MEASURE_BETTER ->
          turn("Measure it better", what.isEmpty() ? "" : what + ": undecided", measure);
      case TYPE_LIMIT -> turn("Type its limit", what + ": none yet", measure);
      case DECIDE -> turn("Decide it", "no reading tells", this::choose);
    }
  }

  private void measure(Optional<ReadingPlan> plan) {
    plan.ifPresentOrElse(
        one -> open(() -> MeasureScreen.of(context, Subject.ofPart(item), one)),
        () -> context.navigator().show(ScreenId.MEASURE, item));
  }

  private void choose() {
    List<Choice<Decision>> all =
        Arrays.stream(Decision.values())
            .filter(one -> model.objection(one).isEmpty())
            .map(one -> new Choice<>(one, Words.capital(one.word()), ""))
            .toList();
    open(() -> new ChoiceScreen<>(context, title(), all, this::ask));
  }

  private void turn(String words, String more, Runnable act) {
    tag.setWords(words, touch().brief(more, ""));
    first = act;
  }

  @Override
  protected List<Region> rows() {
    List<Region> rows = new ArrayList<>();
    for (DecidePartModel.Line line : model.lines()) {
      if (line.source().isEmpty()) {
        rows.add(told(line.heading(), line.words()));
      } else {
        List<WordsScreen.Paragraph> whole =
            List.of(
                new WordsScreen.Paragraph(line.heading(), line.words()),
                new WordsScreen.Paragraph("Source", line.source()));
        rows.add(row(line, () -> open(() -> new WordsScreen(context, title(), whole))));
      }
    }
    return rows;
  }

  /** Large letters leave the reason out where the rows would need another page for it. */
  private Region row(DecidePartModel.Line line, Runnable act) {
    if (!touch().isLarge()) {
      return key(line.heading(), line.words(), act);
    }
    if (line.heading().equals(DecideModel.proposed(model.proposed()))) {
      // The tag says what is proposed; what is not on it is why.
      return ListPage.spare(touch(), Words.withoutStop(line.brief()), line.heading(), act);
    }
    String heading = alone(line);
    String words = heading.equals(line.heading()) ? line.words() : "";
    return ListPage.spare(touch(), heading, words, act);
  }

  /** With large letters the heading is all that is seen: one that others have, too, says more. */
  private String alone(DecidePartModel.Line line) {
    long same = model.lines().stream().filter(one -> one.heading().equals(line.heading())).count();
    String what = line.heading().equals(DecidePartModel.OPEN_CHECK) ? "Check" : line.heading();
    String words = Words.small(Words.withoutStop(line.words()));
    return same > 1 ? what + ": " + words : line.heading();
  }

  @Override
  public void scan(Scanned scanned) {
    ScannedPart.find(context, scanned, DecideScreen.WANTED).ifPresent(this::goOn);
  }

  private void goOn(int other) {
    context.navigator().back();
    open(() -> new DecidePartScreen(context, other));
  }

  /** The keys keep their places, so that a hand that knows them cannot decide something else. */
  private void ask(Decision decision) {
    Optional<String> objection = model.objection(decision);
    if (objection.isPresent()) {
      context.say(objection.get());
      return;
    }
    String title = "Why " + decision.word() + " it?";
    List<Choice<Runnable>> usual = new ArrayList<>();
    for (DecidePartModel.Reason reason : model.reasons(decision)) {
      usual.add(new Choice<>(() -> keep(decision, reason), reason.words(), ""));
    }
    ReasonAsking.ask(context, title, usual, "other", words -> decide(decision, words));
  }

  private void keep(Decision decision, DecidePartModel.Reason reason) {
    model
        .question(reason)
        .ifPresentOrElse(
            question -> unmeasured(question, decision), () -> decide(decision, reason.words()));
  }

  /** What was not measured is never written down as measured. */
  private void unmeasured(String question, Decision decision) {
    Runnable measure = () -> context.navigator().show(ScreenId.MEASURE, item);
    Runnable anyway = () -> decide(decision, NOT_MEASURED);
    String word = Words.capital(decision.word());
    List<Choice<Runnable>> choices =
        List.of(
            new Choice<>(measure, "Measure it", ""),
            new Choice<>(anyway, word + " it all the same", "kept as: " + NOT_MEASURED));
    open(() -> new ChoiceScreen<>(context, question, choices, Runnable::run));
  }

  private void decide(Decision decision, String reason) {
    boolean went = context.attempt(() -> context.say(model.decide(decision, reason)));
    boolean decided = went && model.decision().equals(Optional.of(decision));
    if (once && decided) {
      context.navigator().back();
    }
    context.navigator().changed();
  }
}
