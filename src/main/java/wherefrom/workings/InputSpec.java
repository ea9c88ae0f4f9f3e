package wherefrom.workings;

/** What a working asks for. */
public sealed interface InputSpec permits AmountInput, ChoiceInput {
  /** The key on the command line, such as {@code gasket-bore}. */
  String key();

  /** The name on a screen, such as "gasket bore". */
  String words();

  /** What to measure and which sign it has, in a sentence. */
  String meaning();

  boolean required();
}
