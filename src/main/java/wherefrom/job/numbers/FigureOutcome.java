package wherefrom.job.numbers;

/** What became of a figure that was typed. */
public sealed interface FigureOutcome {
  /** It is in the job. */
  record Done() implements FigureOutcome {}

  /** It is not; the sentence says why and what to do. */
  record Refused(String sentence) implements FigureOutcome {}
}
