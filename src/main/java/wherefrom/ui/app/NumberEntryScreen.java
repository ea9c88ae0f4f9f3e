package wherefrom.ui.app;

import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.controls.Keypad;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Split;

/** Asks for figures on a large pad, or on a real keyboard. */
public class NumberEntryScreen extends Asking {

  private static final int MOST_SIGNED = 9;

  /**
   * @param keys what else there is to press, above Done
   */
  NumberEntryScreen(
      ScreenContext context,
      String title,
      String question,
      Keypad pad,
      List<? extends Region> keys,
      Consumer<String> done) {
    super(context, title, pad, done);
    VBox side = Panes.column(context.scale(), Panes.grow(context.touch().text(question)));
    side.getChildren().addAll(keys);
    side.getChildren().add(context.touch().tag("Done", "", this::enter));
    lay(new Split(context.scale(), pad, side));
  }

  /** Asks for whole figures, such as the six digits of a tag. */
  public static NumberEntryScreen digits(
      ScreenContext context, String title, String question, int most, Consumer<String> done) {
    return new NumberEntryScreen(
        context, title, question, Keypad.digits(context.touch(), most), List.of(), done);
  }

  /** Asks how many; none is refused at once. */
  public static NumberEntryScreen count(
      ScreenContext context, String title, String question, int most, IntConsumer done) {
    return digits(context, title, question, most, typed -> done.accept(count(typed)));
  }

  private static int count(String typed) {
    int count = typed.isEmpty() ? 0 : Integer.parseInt(typed);
    if (count == 0) {
      throw new IllegalArgumentException("Type how many first: 1 or more.");
    }
    return count;
  }

  /** Asks for a size, with the decimal mark of the person's language. */
  public static NumberEntryScreen size(
      ScreenContext context, String title, String question, int most, Consumer<String> done) {
    return new NumberEntryScreen(context, title, question, decimal(context, most), List.of(), done);
  }

  /** Asks for a figure that can be less than nothing, such as an angle before top dead centre. */
  public static NumberEntryScreen signed(
      ScreenContext context, String title, String question, Consumer<String> done) {
    Keypad pad = decimal(context, MOST_SIGNED);
    Region sign = context.touch().key(Keypad.SIGN, pad::turnSign);
    return new NumberEntryScreen(context, title, question, pad, List.of(sign), done);
  }

  private static Keypad decimal(ScreenContext context, int most) {
    return Keypad.decimal(context.touch(), most, Locale.getDefault(Locale.Category.FORMAT));
  }
}
