package wherefrom.ui.puttogether;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import java.util.function.IntFunction;
import wherefrom.job.puttogether.OnPurpose;
import wherefrom.job.puttogether.PutTogether;
import wherefrom.parts.Part;
import wherefrom.rules.Cue;
import wherefrom.rules.Verdict;
import wherefrom.rules.WayOut;
import wherefrom.ui.app.BackAsking;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ReasonAsking;
import wherefrom.ui.app.Screen;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.changes.ConsequenceScreen;
import wherefrom.ui.changes.StandingScreen;
import wherefrom.ui.decide.DecidePartScreen;
import wherefrom.ui.takeapart.PartName;

/** What the keys of a stop do: some solve it here, some lead to another screen and back. */
final class StopWays implements WaysOut {
  private final ScreenContext context;
  private final PutTogetherModel model;
  private final Consumer<Optional<Cue>> answer;
  private final Consumer<String> typeCode;
  private boolean away;

  /**
   * @param answer shows and sounds what came of a way that was gone
   * @param typeCode asks for a code with this question
   */
  StopWays(
      ScreenContext context,
      PutTogetherModel model,
      Consumer<Optional<Cue>> answer,
      Consumer<String> typeCode) {
    this.context = context;
    this.model = model;
    this.answer = answer;
    this.typeCode = typeCode;
  }

  /** Whether a way led to another screen, and this is the way back; asked once. */
  boolean isBack() {
    boolean back = away;
    away = false;
    return back;
  }

  @Override
  public void deed(WayOut deed) {
    switch (deed) {
      case FOUND, CAP_WAS_OFF -> answer.accept(isHere(model, deed));
      case BACK_FROM_WASHING, BACK_FROM_SHOP ->
          BackAsking.ask(
              context, model.stopped().part(), deed, () -> answer.accept(isHere(model, deed)));
      case DECIDE -> open(item -> DecidePartScreen.once(context, item));
      case DO_THE_CHECK -> open(this::check);
      case NEW_PART -> newPart();
      case HEAD, SHAFT, CAP, ROD -> about(item -> toCarrier());
      case PAGE -> about(item -> context.navigator().show(ScreenId.PART, item));
      case TAKE_OUT -> tookOut();
      case MAKE_ROOM -> makeRoom();
      default -> typeCode.accept("The six digits on the tag.");
    }
  }

  /** The stopped part is in the hand, and not away; then it is judged again. */
  static Optional<Cue> isHere(PutTogetherModel model, WayOut deed) {
    StopModel stopped = model.stopped();
    return model.leave(together -> together.after(() -> stopped.isHere(deed)));
  }

  private void toCarrier() {
    model.stopped().place().ifPresent(place -> ToCarrier.open(context, place));
  }

  private Screen check(int item) {
    return model
        .stopped()
        .check()
        .<Screen>map(rule -> new ConsequenceScreen(context, rule.consequence()))
        .orElseGet(() -> StandingScreen.of(context, item));
  }

  /**
   * Its tag is printed at once; the old part is then stopped as retired, which names the new one.
   */
  private void newPart() {
    PlaceWays ways = new PlaceWays(context, new MissingModel(context.getJob()), () -> away = true);
    Optional<String> why = model.stopped().whyNew();
    model.stopped().part().ifPresent(part -> ways.replace(part, why));
  }

  private void open(IntFunction<Screen> screen) {
    about(item -> context.navigator().open(() -> screen.apply(item)));
  }

  /** Another screen about the stopped part; the way back leads to the same scan. */
  private void about(IntConsumer way) {
    model
        .stopped()
        .part()
        .ifPresent(
            part -> {
              away = true;
              way.accept(part.item());
            });
  }

  /** What else there is: the bench, the part away, what to do now. */
  @Override
  public void more() {
    context
        .navigator()
        .open(
            () ->
                new OtherWaysScreen(
                    context,
                    model,
                    () -> answer.accept(model.leave(PutTogether::putAway)),
                    this::otherPlace));
  }

  private void otherPlace() {
    answer.accept(model.leave(PutTogether::otherPlace));
  }

  @Override
  public void again() {
    model.unkept().ifPresent(deed -> answer.accept(model.leave(deed)));
  }

  /** A part that sits in a place is taken for out only where somebody says so twice. */
  private void makeRoom() {
    inTheWay()
        .ifPresent(
            there ->
                context
                    .navigator()
                    .open(
                        () ->
                            new ChoiceScreen<>(
                                context,
                                "Is the " + name(there) + " out?",
                                List.of(
                                    new Choice<Runnable>(
                                        this::tookOut, "Yes", "lay it aside, with its tag on"),
                                    new Choice<Runnable>(
                                        () -> context.say("Then the stop stands."), "No", "")),
                                Runnable::run)));
  }

  private Optional<Part> inTheWay() {
    return model.stop().flatMap(Verdict::findInTheWay);
  }

  private String name(Part part) {
    return PartName.of(context.state().layout(), part.home()).inLine();
  }

  /** What is recorded as out from then on is said, whatever comes of the part in the hand. */
  @Override
  public void tookOut() {
    Optional<Part> there = inTheWay();
    answer.accept(model.leave(PutTogether::tookOut));
    there
        .filter(part -> !Optional.of(part).equals(inTheWay()))
        .ifPresent(part -> context.say("Recorded as taken out: " + name(part) + "."));
  }

  @Override
  public void chooseReason() {
    model
        .stop()
        .map(OnPurpose::of)
        .ifPresent(why -> ReasonAsking.ask(context, why.question(), why.reasons(), this::chosen));
  }

  private void chosen(String words) {
    model.chooseReason(words);
    answer.accept(Optional.empty());
  }

  @Override
  public void onPurpose() {
    answer.accept(model.fitOnPurpose());
  }
}
