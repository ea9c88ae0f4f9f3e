package wherefrom.text;

import java.util.List;
import java.util.Locale;

/** Words as a text wants them. All of it is English, in the American way. */
public final class Words {
  private Words() {}

  /** The words with a capital first letter; empty stays empty. */
  public static String capital(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  /** The words with a small first letter; empty stays empty. */
  public static String small(String words) {
    return words.isEmpty()
        ? words
        : words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }

  /** The words of a sentence, to go on in another. */
  public static String withoutStop(String sentence) {
    return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
  }

  /** The words with one full stop. */
  public static String withStop(String words) {
    return words.endsWith(".") ? words : words + ".";
  }

  /** The first of several sentences; the whole where there is one. */
  public static String firstSentence(String words) {
    int end = words.indexOf(". ") + 1;
    return end > 0 ? words.substring(0, end) : words;
  }

  /** Each of several sentences. */
  public static List<String> sentences(String words) {
    return List.of(words.split("(?<=[.?!]) "));
  }

  /** With a capital and one full stop, question or exclamation mark; empty stays empty. */
  public static String sentence(String words) {
    boolean ends = words.isEmpty() || ".?!".indexOf(words.charAt(words.length() - 1)) >= 0;
    return capital(words) + (ends ? "" : ".");
  }

  /** {@code Source: TM 9-8000}; what has no source says so once, and is not called one. */
  public static String source(String source) {
    return source.endsWith("no source") ? capital(source) : "Source: " + source;
  }

  /** {@code a place}, {@code an answer}: by the first letter, which the words here go by. */
  public static String withArticle(String words) {
    return ("aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
  }

  /** {@code 1 piece}, {@code 3 pieces}: for words that take an s. */
  public static String count(long count, String one) {
    return count(count, one, one + "s");
  }

  /** {@code 1 entry}, {@code 3 entries}. */
  public static String count(long count, String one, String many) {
    return count + " " + (count == 1 ? one : many);
  }

  /** A part's number as it stands on its tag, four digits at least: {@code 0012}. */
  public static String number(int item) {
    return String.format(Locale.ROOT, "%04d", item);
  }
}
