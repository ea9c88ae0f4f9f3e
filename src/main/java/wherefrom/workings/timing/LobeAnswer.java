package wherefrom.workings.timing;

/** What fitting a lobe answers. */
public sealed interface LobeAnswer {
  /** The lobe's timing. */
  record Fitted(LobeTiming timing) implements LobeAnswer {}

  /** The readings cannot be fitted; the sentence says what to do. */
  record Unfit(String sentence) implements LobeAnswer {}
}
