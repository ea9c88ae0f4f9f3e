package wherefrom.ui.puttogether;

import java.util.Optional;
import java.util.function.Consumer;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.puttogether.PutTogether.Mode;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Action;
import wherefrom.parts.Place;
import wherefrom.rules.Cue;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.drawn.EngineView;
import wherefrom.ui.photos.PhotosOf;

/** What the keys of putting together do, beside the work and beside a right place. */
final class TogetherKeys implements WorkKeys.Deeds, RightView.Keys {
  private static final String DIGITS = "The six digits on the tag or the place card.";

  private final ScreenContext context;
  private final PutTogetherModel model;
  private final BesideTogether beside;
  private final EngineView engine;
  private final Consumer<Optional<Cue>> answer;
  private final Consumer<String> asking;
  private final Runnable moveOn;

  /**
   * @param answer shows and sounds what came of a deed
   * @param asking asks for a code with this question
   * @param moveOn the right place has been seen
   */
  TogetherKeys(
      ScreenContext context,
      PutTogetherModel model,
      BesideTogether beside,
      EngineView engine,
      Consumer<Optional<Cue>> answer,
      Consumer<String> asking,
      Runnable moveOn) {
    this.context = context;
    this.model = model;
    this.beside = beside;
    this.engine = engine;
    this.answer = answer;
    this.asking = asking;
    this.moveOn = moveOn;
  }

  /** The place in question, where there is a photograph of it as it was. */
  private Optional<Place> photographed() {
    return model
        .right()
        .map(RightModel::place)
        .or(() -> model.halves().flatMap(Halves::here))
        .filter(place -> PhotosOf.isAny(context.state(), place));
  }

  @Override
  public void choose(Mode mode) {
    answer.accept(model.choose(mode));
  }

  @Override
  public void typeCode() {
    asking.accept(DIGITS);
  }

  @Override
  public void missing() {
    context.navigator().open(() -> new MissingScreen(context));
  }

  @Override
  public void finish() {
    missing();
  }

  @Override
  public int held() {
    return new ToFit(context.getJob()).held().size();
  }

  @Override
  public void showHeld() {
    context.navigator().open(() -> new HeldScreen(context));
  }

  @Override
  public void skip() {
    answer.accept(model.act(Action.SKIP));
  }

  @Override
  public void turnOver() {
    engine.turnOver();
  }

  @Override
  public boolean hasPhoto() {
    return photographed().isPresent();
  }

  @Override
  public void photo() {
    photographed().ifPresent(place -> PhotosOf.open(context, place));
  }

  @Override
  public void ways() {
    MoreWays.open(context, this);
  }

  @Override
  public Optional<BigPartRecord> bigPart() {
    return beside.next();
  }

  @Override
  public void show(BigPartRecord part) {
    context.navigator().show(ScreenId.BIG_PART, part.number());
  }

  @Override
  public void print() {
    context.navigator().show(ScreenId.PRINT_TAGS);
  }

  @Override
  public void decide() {
    context.navigator().show(ScreenId.DECIDE);
  }

  @Override
  public void turned() {
    answer.accept(model.turned());
  }

  @Override
  public void more() {
    moveOn.run();
  }
}
