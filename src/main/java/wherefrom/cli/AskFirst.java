package wherefrom.cli;

import wherefrom.rules.CodeVerdict;
import wherefrom.rules.PartNames;

/**
 * A typed code may be another engine's: nothing is wrong with the call, but it waits for a word.
 */
final class AskFirst extends BadInput {
  private static final long serialVersionUID = 1;

  AskFirst(CodeVerdict.AlsoFits question) {
    super(sentence(question));
  }

  /** The question, and how it is answered here. */
  static String sentence(CodeVerdict.AlsoFits question) {
    return question.words(PartNames.NUMBERS).told()
        + (question.others().isEmpty()
            ? ""
            : " To confirm: " + Option.THIS_ENGINE.name() + ", or the sixteen digits.");
  }

  @Override
  Status status() {
    return Status.STOPPED;
  }
}
