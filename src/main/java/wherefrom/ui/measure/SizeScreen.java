package wherefrom.ui.measure;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javafx.scene.layout.Region;
import wherefrom.quantity.Dimension;
import wherefrom.quantity.UnitChoice;
import wherefrom.quantity.UnitSystem;
import wherefrom.text.Words;
import wherefrom.ui.app.Asking;
import wherefrom.ui.app.Help;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.controls.FitText;

/** Asks for one size, in inch or millimetre as the person has it. */
public final class SizeScreen extends Asking {
  private final String question;
  private final String rule;

  /**
   * @param done is given the figure with its unit
   */
  public SizeScreen(
      ScreenContext context,
      String title,
      String question,
      Dimension dimension,
      Consumer<String> done) {
    this(context, title, question, dimension, context.state().units(), done);
  }

  /** The same for a gauge that shows other units than a length. */
  SizeScreen(
      ScreenContext context,
      String title,
      String question,
      UnitChoice units,
      Consumer<String> done) {
    this(
        context,
        title,
        question,
        "",
        new SizePad(context.touch(), context.state().units(), units, false),
        done);
  }

  /**
   * Asks for a size that can be less than nothing, such as what a tool shows at zero.
   *
   * @param rule what minus stands for, in few words: it never leaves the glass
   */
  static SizeScreen signed(
      ScreenContext context,
      String title,
      String question,
      String rule,
      UnitChoice units,
      Consumer<String> done) {
    SizePad pad = new SizePad(context.touch(), context.state().units(), units, true);
    return new SizeScreen(context, title, question, rule, pad, done);
  }

  /**
   * @param units the unit that stands on the pad at first, whatever the job is in
   */
  SizeScreen(
      ScreenContext context,
      String title,
      String question,
      Dimension dimension,
      UnitSystem units,
      Consumer<String> done) {
    this(
        context,
        title,
        question,
        "",
        new SizePad(context.touch(), units, UnitChoice.of(dimension), false),
        done);
  }

  private SizeScreen(
      ScreenContext context,
      String title,
      String question,
      String rule,
      SizePad pad,
      Consumer<String> done) {
    super(context, title, pad, done);
    this.question = question;
    this.rule = rule;
    // Large letters may leave the question to Help.
    Stream<String> told =
        context.touch().isLarge() ? Stream.of(question, Words.capital(rule)) : Stream.of(question);
    List<FitText> words = told.map(context.touch()::text).toList();
    Region said = new SaidAsFits(context.scale(), words, List.of());
    lay(pad.with(said, context.touch().tag("Done", "", this::enter), new Region()));
  }

  /** With the largest letters the sign's key has its rule here. */
  @Override
  public String title() {
    boolean ruled = !rule.isEmpty() && context.scale().textFactor() >= 2;
    return ruled ? super.title() + ", " + rule : super.title();
  }

  /** The question: with the largest letters it stands here alone. */
  @Override
  public Help help() {
    return new Help(List.of(question));
  }

  @Override
  public void enter() {
    if (!isEmpty()) {
      super.enter();
    }
  }
}
