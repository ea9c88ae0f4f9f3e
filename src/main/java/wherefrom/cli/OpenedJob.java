package wherefrom.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wherefrom.job.EngineJob;
import wherefrom.job.OpenJob;
import wherefrom.job.shelf.Shelf;
import wherefrom.job.tags.CodeLookup;
import wherefrom.job.tags.JobNames;
import wherefrom.job.tags.TagBook;
import wherefrom.parts.Part;
import wherefrom.parts.TagCode;
import wherefrom.rules.CodeVerdict;

/**
 * The job of a call, open, with its neighbours on the shelf.
 *
 * @param names of the neighbours; where the call says so, their typed codes are left out
 */
record OpenedJob(Shelf shelf, OpenJob job, JobNames names) implements AutoCloseable {

  /** Opens the job of {@code --job}; what was noticed on opening is said on standard error. */
  static OpenedJob open(Call call, Answer answer) throws BadInput {
    Path folder = call.wholePath("--job");
    Path around = Optional.ofNullable(folder.getParent()).orElse(folder);
    Shelf shelf = call.services().shelves().apply(around);
    OpenJob job = shelf.open(folder);
    String noticed = job.condition().sentence();
    if (!noticed.isEmpty()) {
      answer.say(noticed);
    }
    return new OpenedJob(shelf, job, call.has(Option.THIS_ENGINE) ? shelf.confirmed() : shelf);
  }

  EngineJob state() {
    return job.state();
  }

  TagBook book() {
    return new TagBook(job.state(), names);
  }

  /** Every tag that the other jobs of the shelf printed. */
  List<TagCode> printedElsewhere() {
    return shelf.listPrinted(job.state().engine());
  }

  /** The digits of a part's tag. */
  String digits(Part part) {
    return book().of(part).digits();
  }

  /**
   * What a code stands for.
   *
   * @throws AskFirst where it is a typed one that may be another engine's
   */
  CodeLookup find(String code) throws BadInput {
    CodeLookup found = book().find(code);
    if (found instanceof CodeLookup.Refused refused
        && refused.verdict() instanceof CodeVerdict.AlsoFits question) {
      throw new AskFirst(question);
    }
    return found;
  }

  /** The part that a code stands for. */
  Part part(String code) throws BadInput {
    CodeLookup found = find(code);
    if (found instanceof CodeLookup.APart part) {
      return part.part().part();
    }
    throw new BadInput(code + " is not a part of this job: " + Meaning.sentence(found));
  }

  /** Something that is done in several steps, each of which may be refused. */
  interface Steps {
    void take() throws BadInput;
  }

  /** Takes several steps as one act: where one of them is refused, none is kept. */
  void asOne(Steps steps) throws BadInput {
    Optional<BadInput> refused =
        job.asOne(
            () -> {
              try {
                steps.take();
                return Optional.<BadInput>empty();
              } catch (BadInput e) {
                return Optional.of(e);
              }
            },
            Optional::isEmpty);
    if (refused.isPresent()) {
      throw refused.get();
    }
  }

  @Override
  public void close() {
    job.close();
  }
}
