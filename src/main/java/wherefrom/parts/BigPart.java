package wherefrom.parts;

/**
 * One big part of a job.
 *
 * @param number counted from 1 within the job; never used twice
 */
public record BigPart(int number, BigPartName name) {

  public String words() {
    return name.words();
  }

  /** The code on its tag. */
  public TagCode code(int engine) {
    return new TagCode(TagType.BIG_PART, engine, number, 1);
  }
}
