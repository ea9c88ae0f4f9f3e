package wherefrom.job.tags;

import java.util.List;
import java.util.Optional;
import wherefrom.parts.TagCode;

/**
 * Names of the other jobs on the shelf, to say whose a foreign tag is, and which typed codes are
 * theirs too.
 */
@FunctionalInterface
public interface JobNames {
  Optional<String> find(int engine);

  /**
   * The names of other known jobs that have a tag with this typed code.
   *
   * @param digits six digits, without a space
   * @param engine the job that is open, which is no other
   */
  default List<String> listTyped(String digits, int engine) {
    return List.of();
  }

  /**
   * The tags that other known jobs printed, each once, those of the job that was last worked on
   * first.
   *
   * @param engine the job that is open, which is no other
   */
  default List<TagCode> listPrinted(int engine) {
    return List.of();
  }

  /** The same names, once a person has said that what is typed is this engine's. */
  default JobNames confirmed() {
    JobNames asking = this;
    return new JobNames() {
      @Override
      public Optional<String> find(int engine) {
        return asking.find(engine);
      }

      @Override
      public List<TagCode> listPrinted(int engine) {
        return asking.listPrinted(engine);
      }
    };
  }
}
