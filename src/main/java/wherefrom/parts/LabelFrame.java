package wherefrom.parts;

/** What is printed round a tag's symbol, in modules of the symbol. */
public final class LabelFrame {
  /** White between the symbol and the frame. */
  public static final int QUIET_ZONE = 4;

  /** Thickness of the black frame, which helps to find a dirty tag. */
  public static final int FRAME = 2;

  /** White that must stay free round the frame. */
  public static final int MARGIN = 2;

  /** From the label's outer edge to the symbol. */
  public static final int INSET = MARGIN + FRAME + QUIET_ZONE;

  /** From outer edge to outer edge, white margin included. */
  public static final int WIDTH = SymbolLayout.SIZE + 2 * INSET;

  private LabelFrame() {}

  /** Whether a module of the label, counted from its outer top left, is black frame. */
  public static boolean isFrame(int row, int column) {
    int edge = Math.min(Math.min(row, column), WIDTH - 1 - Math.max(row, column));
    return edge >= MARGIN && edge < MARGIN + FRAME;
  }
}
