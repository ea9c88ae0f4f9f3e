package wherefrom.referee;

import wherefrom.referee.Referee.Word;
import wherefrom.rules.Verdict;

/** What the program says, in the referee's words. */
final class Spoken {
  private Spoken() {}

  static Word word(Verdict verdict) {
    return switch (verdict.name()) {
      case RIGHT_PLACE -> Word.RIGHT;
      case WRONG_PLACE -> Word.OTHER_PLACE;
      case WRONG_KIND -> Word.WRONG_KIND;
      case WRONG_HALF -> Word.WRONG_HALF;
      case WRONG_END -> Word.WRONG_END;
      case WRONG_MATE -> Word.WRONG_MATE;
      case MUST_BE_NEW -> Word.MUST_BE_NEW;
      case NOT_CLEARED -> Word.NOT_CLEARED;
      case PLACE_TAKEN -> Word.PLACE_TAKEN;
      case RETIRED -> Word.RETIRED;
      case FITTED_BUT -> Word.FITTED_BUT;
      case ALREADY_FITTED -> verdict.stops() ? Word.FITTED_ELSEWHERE : Word.DONE;
      default -> throw new IllegalStateException("no such word: " + verdict.word());
    };
  }
}
