package wherefrom.ui.puttogether;

import java.util.Optional;
import wherefrom.job.bags.BigPartRecord;
import wherefrom.job.puttogether.FitMode;
import wherefrom.job.puttogether.ToFit;
import wherefrom.parts.Action;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.ScreenId;
import wherefrom.ui.app.TypedCode;

/** The keys of putting together while nothing is stopped. */
final class WorkDeeds implements WorkKeys.Deeds {
  private final ScreenContext context;
  private final PutTogetherModel model;
  private final BesideTogether beside;
  private final PutTogetherScreen screen;

  WorkDeeds(
      ScreenContext context,
      PutTogetherModel model,
      BesideTogether beside,
      PutTogetherScreen screen) {
    this.context = context;
    this.model = model;
    this.beside = beside;
    this.screen = screen;
  }

  @Override
  public void choose(FitMode mode) {
    screen.answer(model.choose(mode));
  }

  @Override
  public void typeCode() {
    String question = "The six digits on the tag or the place card.";
    TypedCode.ask(context, question, screen::scan, this::noTag);
  }

  @Override
  public void missing() {
    context.navigator().open(() -> new MissingScreen(context));
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
    screen.answer(model.act(Action.SKIP));
  }

  @Override
  public void turnOver() {
    screen.turnOver();
  }

  @Override
  public boolean hasPhoto() {
    return screen.photographed().isPresent();
  }

  @Override
  public void photo() {
    screen.photo();
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
  public void noTag() {
    NoTag.of(context, model, screen::known).ask();
  }

  @Override
  public void hold() {
    screen.hold();
  }

  @Override
  public void stop() {
    screen.moveOn();
  }

  @Override
  public void decide() {
    context.navigator().show(ScreenId.DECIDE);
  }
}
