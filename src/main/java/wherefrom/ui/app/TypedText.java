package wherefrom.ui.app;

import java.util.regex.Pattern;

/** What typed characters mean to the window's keys. */
final class TypedText {
  static final String ERASE = "\b";
  static final String TAB = "\t";
  private static final String ENDS = "\r\n\t";

  /** Escape and Delete come as characters, too: they are pressed, and nobody types them. */
  private static final String NOTHING = "\u001b\u007f";

  /** The six digits under a symbol, or the sixteen in it, or what of them was typed. */
  private static final Pattern CODE = Pattern.compile("[0-9]{1,16}");

  private static final Pattern FIGURE = Pattern.compile("[0-9]+([.,][0-9]+)?");

  private TypedText() {}

  /** Whether it is the character of a key that writes nothing. */
  static boolean writesNothing(String character) {
    return NOTHING.contains(character);
  }

  /** Whether it ends what was typed: Enter or Tab. */
  static boolean isEnd(int codePoint) {
    return ENDS.indexOf(codePoint) >= 0;
  }

  /** Whether Enter ended it. */
  static boolean isEntered(String typed) {
    return typed.endsWith("\r") || typed.endsWith("\n");
  }

  /** Whether there is anything to read in it: a key with Ctrl types a character that is none. */
  static boolean isWritten(String typed) {
    return typed
        .codePoints()
        .anyMatch(each -> !Character.isISOControl(each) && !Character.isWhitespace(each));
  }

  /** Whether it is a tag's code or the beginning of one. */
  static boolean isCode(String typed) {
    return CODE.matcher(typed.strip()).matches();
  }

  static boolean isFigure(String typed) {
    return FIGURE.matcher(typed.strip()).matches();
  }
}
