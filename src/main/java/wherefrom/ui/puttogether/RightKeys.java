package wherefrom.ui.puttogether;

import wherefrom.ui.app.ScreenContext;

/** The keys beside a right place. */
final class RightKeys implements RightView.Keys {
  private final ScreenContext context;
  private final PutTogetherScreen screen;

  RightKeys(ScreenContext context, PutTogetherScreen screen) {
    this.context = context;
    this.screen = screen;
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
    screen.typeCode("The six digits on the tag or the place card.");
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
