package wherefrom.job.entry;

/** Several small pieces hang on one tag, on a wire. */
public record PiecesCounted(int item, int pieces) implements JobEntry {}
