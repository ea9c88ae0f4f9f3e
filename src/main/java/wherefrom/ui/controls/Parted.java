package wherefrom.ui.controls;

import java.util.List;
import javafx.scene.layout.Region;

/** A row of a list that holds words to be read, which may go on on the next page. */
interface Parted {
  /** Where a page may end behind a letter, as {@link Pages.Rows#ends} asks, in a row so wide. */
  List<Integer> ends(int from, double width, int least);

  /** The words between two letters as a row of their own, so wide. */
  Region piece(int from, int to, double width);

  /** How many letters it has; none if it stays whole. */
  int letters();
}
