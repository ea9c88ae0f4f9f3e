package wherefrom.referee;

import wherefrom.referee.Referee.Word;
import wherefrom.rules.Verdict;

/** What the program says, in the referee's words. */
final class Spoken {
  private Spoken() {}

  static Word word(Verdict verdict) {
    return switch (verdict.word()) {
      case "right place" -> Word.RIGHT;
      case "other place" -> Word.OTHER_PLACE;
      case "wrong kind" -> Word.WRONG_KIND;
      case "wrong half" -> Word.WRONG_HALF;
      case "wrong end" -> Word.WRONG_END;
      case "wrong mate" -> Word.WRONG_MATE;
      case "must be new" -> Word.MUST_BE_NEW;
      case "not cleared" -> Word.NOT_CLEARED;
      case "place taken" -> Word.PLACE_TAKEN;
      case "retired" -> Word.RETIRED;
      case "fitted, but" -> Word.FITTED_BUT;
      case "already fitted" -> verdict.stops() ? Word.FITTED_ELSEWHERE : Word.DONE;
      default -> throw new IllegalStateException("no such word: " + verdict.word());
    };
  }
}
