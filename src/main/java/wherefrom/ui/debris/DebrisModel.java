package wherefrom.ui.debris;

import java.util.List;
import java.util.stream.Collectors;
import wherefrom.inspection.Look;
import wherefrom.job.OpenJob;
import wherefrom.job.inspect.DebrisBook;
import wherefrom.rules.debris.DebrisFind;
import wherefrom.rules.debris.DebrisLook;
import wherefrom.rules.debris.DebrisMap;
import wherefrom.rules.debris.DebrisPlace;
import wherefrom.rules.debris.MainsQuestion;
import wherefrom.rules.debris.Opening;
import wherefrom.text.Words;

/** What was found where, what it points to, what to open next. */
final class DebrisModel {

  /** An answer that can be given after something was opened. */
  record Seen(Look look, String words, String more) {}

  private static final int MOST_LETTERS = 12;

  private final DebrisBook book;

  DebrisModel(OpenJob job) {
    this.book = new DebrisBook(job);
  }

  DebrisMap map() {
    return book.map();
  }

  /** What is to be opened; to write a find down opens nothing. */
  List<Opening> openings() {
    return map().openings().stream().filter(one -> one != Opening.NOTE).toList();
  }

  /** Whether a find is still to be written down and photographed. */
  boolean isToNote() {
    return map().openings().contains(Opening.NOTE);
  }

  /** The bearings of which a look answers whether it reached the mains. */
  Opening telling() {
    return MainsQuestion.wantsAll(finds()) ? Opening.ALL_BEARINGS : Opening.FIRST_BEARINGS;
  }

  List<DebrisFind> finds() {
    return book.finds();
  }

  /** What was said of a find, oldest first. */
  List<String> notes(DebrisFind find) {
    return book.notes(find);
  }

  /** The looks found at a place. */
  List<DebrisLook> at(DebrisPlace place) {
    return book.finds().stream()
        .filter(find -> find.place() == place)
        .map(DebrisFind::look)
        .toList();
  }

  /** {@code Pan}, and below it what was found there, or how much where that is too long. */
  String words(DebrisPlace place) {
    String found = found(place);
    return Words.capital(place.brief()) + (found.isEmpty() ? "" : "\n" + found);
  }

  /** What was found at a place, in a few letters; empty where nothing was. */
  String found(DebrisPlace place) {
    List<DebrisLook> found = at(place);
    String what = found.stream().map(DebrisLook::brief).collect(Collectors.joining(", "));
    return what.length() <= MOST_LETTERS ? what : Words.count(found.size(), "find");
  }

  /** Records a find; what to suspect. */
  String found(DebrisPlace place, DebrisLook look, String note) {
    book.found(place, look, note);
    return Words.capital(DebrisMap.suspect(new DebrisFind(place, look)).sentence());
  }

  /** What can be answered of an opening: bearings are judged, all else is looked into. */
  static List<Seen> answers(Opening opening) {
    if (opening == Opening.FIRST_BEARINGS || opening == Opening.ALL_BEARINGS) {
      return List.of(
          new Seen(Look.PASS, "Pass", "even gray bands, no copper, no scores, no grit"),
          new Seen(Look.SUSPECT, "Suspect", "measure it, or show it to a machinist"),
          new Seen(Look.FAIL, "Fail", "worn, scored, or grit in it: it reached the bearings"));
    }
    if (opening == Opening.NOTE) {
      return List.of(new Seen(Look.PASS, "Written down", ""));
    }
    return List.of(
        new Seen(Look.PASS, "Pass", "nothing there"),
        new Seen(Look.SUSPECT, "Suspect", "something is there: mark on the map where, and what"));
  }

  /** Records a look at what was opened; what to do now. */
  String opened(Opening opening, Look look) {
    book.opened(opening, look, "");
    boolean bearings = opening == Opening.FIRST_BEARINGS || opening == Opening.ALL_BEARINGS;
    if (bearings) {
      return words(question(), false) + ".";
    }
    if (opening == Opening.NOTE) {
      return "Written down.";
    }
    return look == Look.PASS
        ? opening.title() + ": pass."
        : opening.title() + ": suspect. Tap the debris map where it lies.";
  }

  MainsQuestion question() {
    return map().question();
  }

  /** The answer alone, beside the title. */
  static String answer(MainsQuestion question) {
    return answer(question, true);
  }

  /** The question with its answer, for a key. */
  static String words(MainsQuestion question, boolean brief) {
    return (brief ? "Mains: " : "Did it reach the mains? ") + answer(question, brief);
  }

  private static String answer(MainsQuestion question, boolean brief) {
    return switch (question.answer()) {
      case NOTHING_FOUND -> brief ? "clean" : "nothing found";
      case OPEN -> brief ? "OPEN" : "NOT ANSWERED";
      case YES -> "YES";
      case NO -> "no";
    };
  }
}
