package wherefrom.ui.app;

import java.util.ArrayList;
import java.util.List;

/**
 * Words to be read in portions of which each has room on a page. They part between sentences, else
 * after a comma or the like, else between two words. What goes on says so, by that mark or by dots.
 * A mark and dots together look as if words were left out.
 */
public final class Portions {
  /** After a portion that ends within a sentence. */
  private static final String GOES_ON = " …";

  private static final String SENTENCE = ".!?";
  private static final String CLAUSE = ";:,";

  /** What is left of a sentence for the last portion is no single word. */
  private static final double SMALL_REST = 1.5;

  private Portions() {}

  /**
   * The words in their order, at least one portion.
   *
   * @param most letters of a portion; a word that is longer stands alone
   */
  public static List<String> of(String words, int most) {
    List<String> portions = new ArrayList<>();
    String rest = words.strip();
    int end = end(rest, most);
    while (end > 0) {
      portions.add(signed(rest.substring(0, end).strip()));
      rest = rest.substring(end).strip();
      end = end(rest, most);
    }
    portions.add(rest);
    return List.copyOf(portions);
  }

  /** Whether more follows a portion within its sentence. */
  static boolean goesOn(String portion) {
    return portion.endsWith(GOES_ON) || endsWith(CLAUSE, portion);
  }

  private static String signed(String portion) {
    return endsWith(SENTENCE + CLAUSE, portion) ? portion : portion + GOES_ON;
  }

  private static boolean endsWith(String marks, String portion) {
    return !portion.isEmpty() && marks.indexOf(portion.charAt(portion.length() - 1)) >= 0;
  }

  /** Where the first portion ends; 0 where all the words are one. */
  private static int end(String rest, int most) {
    if (rest.length() <= most) {
      return 0;
    }
    int sentence = after(SENTENCE, rest, most);
    if (sentence > most / 3) {
      return sentence;
    }
    int clause = after(CLAUSE, rest, most);
    if (clause > most / 2) {
      return clause;
    }
    boolean small = rest.length() < SMALL_REST * most;
    int space = rest.lastIndexOf(' ', small ? rest.length() * 2 / 3 : most);
    return space > 0 ? space : Math.max(0, rest.indexOf(' '));
  }

  /** Behind the last of these marks that a space follows. */
  private static int after(String marks, String rest, int most) {
    int at = rest.lastIndexOf(' ', most);
    while (at > 0 && marks.indexOf(rest.charAt(at - 1)) < 0) {
      at = rest.lastIndexOf(' ', at - 1);
    }
    return Math.max(0, at);
  }
}
