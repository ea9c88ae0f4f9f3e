package wherefrom.ui.app;

import java.util.function.LongSupplier;
import wherefrom.ui.controls.Scale;
import wherefrom.ui.controls.Touch;

/** The letters that a screen is made with: of the size that is set, on the glass of the window. */
final class GlassLetters {
  private final LongSupplier nanos;
  private final WindowFrame window;
  private Touch touch;

  /**
   * @param set the sizes that the settings say
   * @param nanos a steady clock
   * @param window the glass that there is
   */
  GlassLetters(Scale set, LongSupplier nanos, WindowFrame window) {
    this.nanos = nanos;
    this.window = window;
    this.touch = new Touch(set, nanos);
  }

  Touch touch() {
    return touch;
  }

  /** Letters of this size for the screen that is made next, and for no other. */
  Touch next(double factor) {
    Scale asked = touch.scale().withText(factor);
    touch = touch.with(asked.on(window.getWidth(), window.getHeight()));
    return touch;
  }

  /** Letters of the same size with brief words, for the screen that is made next. */
  Touch brief() {
    touch = touch.with(touch.scale().brief());
    return touch;
  }

  /** Goes on with the letters of a screen that was made before. */
  void use(Touch its) {
    touch = its;
  }

  /** Begins anew with the sizes that the settings say. */
  void set(Scale set) {
    touch = new Touch(set, nanos);
  }
}
