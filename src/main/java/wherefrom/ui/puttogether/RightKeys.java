package wherefrom.ui.puttogether;

import wherefrom.ui.app.ScreenContext;

/** The keys beside a right place. */
final class RightKeys implements RightView.Keys {
  private final ScreenContext context;
  private final PutTogetherScreen screen;
  private final WorkDeeds deeds;

  RightKeys(ScreenContext context, PutTogetherScreen screen, WorkDeeds deeds) {
    this.context = context;
    this.screen = screen;
    this.deeds = deeds;
  }

  @Override
  public void turned() {
    screen.turned();
  }

  @Override
  public void hold() {
    screen.hold();
  }

  @Override
  public void typeCode() {
    deeds.typeCode();
  }

  @Override
  public void finish() {
    context.navigator().open(() -> new MissingScreen(context));
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
  public void more() {
    screen.moveOn();
  }
}
