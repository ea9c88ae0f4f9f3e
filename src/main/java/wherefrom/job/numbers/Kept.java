package wherefrom.job.numbers;

/** What became of a figure that was typed. */
public sealed interface Kept {
  /** It is in the job. */
  record Done() implements Kept {}

  /** It is not; the sentence says why and what to do. */
  record Refused(String sentence) implements Kept {}
}
