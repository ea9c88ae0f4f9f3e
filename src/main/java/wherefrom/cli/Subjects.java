package wherefrom.cli;

import java.util.List;
import java.util.Optional;
import wherefrom.inspection.Subject;
import wherefrom.job.photos.PhotoFolder;
import wherefrom.job.tags.CodeLookup;

/** What a look or a measurement is about: a part's code, or a feature such as {@code lobe@3EX}. */
final class Subjects {
  private Subjects() {}

  /** The first operand, of one word or of a code's two, and what follows it. */
  record Call(Optional<String> subject, List<String> rest) {}

  static Call split(List<String> operands) {
    if (operands.isEmpty()) {
      return new Call(Optional.empty(), List.of());
    }
    boolean halves =
        operands.size() > 1
            && operands.get(0).matches("[0-9]{4}")
            && operands.get(1).matches("[0-9]{2}");
    int taken = halves ? 2 : 1;
    return new Call(
        Optional.of(String.join("", operands.subList(0, taken))),
        operands.subList(taken, operands.size()));
  }

  /**
   * @throws BadInput when it is no part and no feature of the job
   */
  static Subject get(OpenedJob bench, String text) throws BadInput {
    Optional<Subject> key = Subject.find(text);
    if (key.isPresent() && key.get() instanceof Subject.AFeature at) {
      if (!at.feature().where(bench.job().state().layout()).contains(at.where())) {
        throw new BadInput(
            "This engine has no "
                + at.words()
                + ". It has: "
                + String.join(
                    ", ",
                    at.feature().where(bench.job().state().layout()).stream()
                        .map(where -> at.feature().key() + "@" + where)
                        .toList())
                + ".");
      }
      return at;
    }
    CodeLookup found = bench.find(text);
    if (found instanceof CodeLookup.APart part) {
      return Subject.ofPart(part.part().part().item());
    }
    throw new BadInput(
        text + " is not a part of this job, nor a feature such as lobe@3EX or main-journal@M2.");
  }

  /**
   * What a photograph shows: the same, or a bag or a big part by its code.
   *
   * @throws BadInput when it is none of these
   */
  static Subject shown(OpenedJob bench, String text) throws BadInput {
    if (Subject.find(text).isPresent()) {
      return get(bench, text);
    }
    Optional<Subject> tagged = PhotoFolder.subject(bench.find(text));
    return tagged.isPresent() ? tagged.get() : get(bench, text);
  }

  /** {@code cylinder 3, exhaust, pushrod} or {@code main journal 2}. */
  static String words(OpenedJob bench, Subject subject) {
    return subject instanceof Subject.APart part
        ? bench.job().state().getPart(part.item()).part().words()
        : ((Subject.AFeature) subject).words();
  }

  /** As it is given to a command: the part's digits, or the feature's key. */
  static String code(OpenedJob bench, Subject subject) {
    return subject instanceof Subject.APart part
        ? bench.book().of(bench.job().state().getPart(part.item()).part()).digits()
        : subject.key();
  }
}
