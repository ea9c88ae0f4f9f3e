package wherefrom.ui.torque;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import wherefrom.job.torque.TorqueBook;
import wherefrom.job.torque.TorqueStep;
import wherefrom.text.UsualWords;
import wherefrom.text.Words;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ListPage;
import wherefrom.ui.app.NumberEntryScreen;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.ListRow;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;

/** Writes a torque card: every figure is the person's own. */
public final class NewCardScreen extends Page {
  private static final String UNSAID = "press to say";

  private record Line(String heading, String now, Runnable press) {}

  private final DraftModel model;
  private final Pager<Line> list;
  private final TagKey tag;

  public NewCardScreen(ScreenContext context) {
    super(context, "New torque card", false);
    model = context.kept().keepOfJob(DraftModel.class, DraftModel::new);
    list =
        Pager.list(
            context.touch(),
            line ->
                line.now().isEmpty()
                    ? ListPage.spare(context.touch(), line.heading(), UNSAID, line.press())
                    : ListRow.key(
                        context.touch(), line.heading(), List.of(line.now()), line.press()));
    tag = tag(this::goOn);
    lay(Panes.column(context.scale(), list, tag));
  }

  /** What is not said yet, the first of it; then the card can start. */
  private Optional<Line> next() {
    return lines().stream().filter(line -> line.now().isEmpty()).findFirst();
  }

  private void goOn() {
    next().map(Line::press).orElse(this::begin).run();
  }

  private void show() {
    list.refill(lines());
    tag.setWords(
        next().map(line -> "Next: " + Words.small(line.heading())).orElse("Start the card"), "");
  }

  private List<Line> lines() {
    return List.of(
        new Line("Which bolts", model.fastener(), this::fastener),
        new Line("How they lie", model.sizeWords(), this::rows),
        new Line("Order", touch().brief(model.orderWords(), model.orderBrief()), this::order),
        new Line("Threads", model.threads(), this::threads),
        new Line("Stages", String.join(", then ", model.stages()), this::stages),
        new Line("Source of the figures", model.source(), this::source));
  }

  private void fastener() {
    ReasonAsking.ask(
        context,
        "Which bolts?",
        DraftModel.fasteners(context.state().layout()),
        then(model::fastener));
  }

  private void rows() {
    count(
        "Rows of bolts",
        "How many rows, with the longer side across?",
        rows ->
            count(
                "Bolts in a row",
                "How many bolts are in the longest row? Where there is none, leave it out of"
                    + " the order.",
                columns -> tell(model.size(rows, columns))));
  }

  private void count(String title, String question, IntConsumer done) {
    open(
        () ->
            NumberEntryScreen.digits(
                context,
                title,
                question,
                2,
                typed -> done.accept(typed.isEmpty() ? 0 : Integer.parseInt(typed))));
  }

  private void order() {
    if (!model.hasSize()) {
      context.say("First press How they lie.");
      return;
    }
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(this::touchInOrder, "My own order", "touch the bolts one by one"),
            new Choice<>(
                model::centreOutward,
                "From the center outward",
                "common practice, no source: service information decides"));
    open(() -> new ChoiceScreen<>(context, "In which order?", ways, then(Runnable::run)));
  }

  private void touchInOrder() {
    open(
        () ->
            new SequenceScreen(
                context,
                model,
                order ->
                    ReasonAsking.ask(
                        context,
                        "Where does this order come from?",
                        UsualWords.orOther("this engine's service information"),
                        then(from -> model.order(order, from)))));
  }

  private void threads() {
    ReasonAsking.ask(
        context,
        "How are the threads prepared? The torque is right only for that.",
        DraftModel.THREADS,
        then(model::threads));
  }

  private void stages() {
    open(() -> new StagesScreen(context, model));
  }

  private void source() {
    open(
        () ->
            new TextEntryScreen(
                context, "Service information and page", model.source(), then(model::source)));
  }

  /** Keeps an answer and shows it: the screen is up again before it is given. */
  private <T> Consumer<T> then(Consumer<T> kept) {
    return words -> {
      kept.accept(words);
      show();
    };
  }

  private void tell(String trouble) {
    if (!trouble.isEmpty()) {
      context.say(trouble);
    }
    show();
  }

  private void open(int card) {
    context.kept().dropOfJob(DraftModel.class);
    context.navigator().back();
    open(() -> new TorqueCardScreen(context, card));
  }

  private void begin() {
    context.attempt(
        () -> {
          TorqueStep step = model.begin(new TorqueBook(context.getJob()));
          step.<Runnable>match(
                  done -> () -> open(done.card().number()),
                  asked -> () -> context.say(asked.question().sentence()),
                  refused -> () -> context.say(refused.sentence()))
              .run();
        });
  }

  @Override
  public void shown() {
    show();
  }
}
