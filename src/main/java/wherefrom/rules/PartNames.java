package wherefrom.rules;

import java.util.Optional;
import wherefrom.parts.Part;
import wherefrom.parts.Place;
import wherefrom.text.Words;

/** What the words of a verdict need to know of the job. */
public interface PartNames {

  /**
   * A check in doubt.
   *
   * @param look {@code fail}
   * @param check with its answer: {@code Is it straight? fail}
   */
  record Found(String look, String check) {}

  /** Where no job is at hand: parts are told by their numbers. */
  PartNames NUMBERS =
      new PartNames() {
        @Override
        public String code(Part part) {
          return "number " + Words.number(part.item());
        }

        @Override
        public String whereabouts(Part part) {
          return "";
        }

        @Override
        public Optional<Found> findFound(Part part) {
          return Optional.empty();
        }

        @Override
        public String job() {
          return "this engine";
        }
      };

  /** What stands on its tag: {@code 0085 49}. */
  String code(Part part);

  /** Where it is: {@code on the bench}; empty where that is not known. */
  String whereabouts(Part part);

  /**
   * What makes it doubtful: the worst that a check or a reading of it gave, and of one that is to
   * be reused what was found since; empty where nothing is in doubt.
   */
  Optional<Found> findFound(Part part);

  /** What stands against a part where it belongs, in a word or two; empty where nothing does. */
  default Optional<String> findAgainst(Part part) {
    return Optional.empty();
  }

  /** The open job's name. */
  String job();

  /** A place's name on the glass. */
  default String place(Place place) {
    return place.brief();
  }

  /** Whose place a part came out of: {@code 3 IN rocker}, {@code new 3 IN rocker}. */
  default String origin(Part part) {
    return (part.fresh() ? "new " : "") + named(part.home());
  }

  /** {@code 3 EX pushrod}; a shell of a bearing by its half, as its place says. */
  default String named(Place place) {
    String at = place(place);
    return switch (place.kind()) {
      case ROD, ROD_CAP, MAIN_CAP -> at;
      case ROD_SHELL, MAIN_SHELL -> at + " shell";
      default -> at + " " + place.kind().word();
    };
  }
}
