package wherefrom.ui.controls;

import java.util.List;
import javafx.scene.Node;

/** A row whose first words are as large as its room lets them: those of one list are alike. */
interface Levelled {
  /** The size of letters that its first words have room for as it stands, in pixels. */
  double fitted();

  /** No larger letters than this. */
  void cap(double sizePx);

  /** Gives the first words of all rows one size: that of the row that has least room. */
  static void level(List<? extends Node> rows) {
    List<Levelled> words =
        rows.stream().filter(Levelled.class::isInstance).map(Levelled.class::cast).toList();
    double size = words.stream().mapToDouble(Levelled::fitted).min().orElse(0);
    words.forEach(row -> row.cap(size));
  }
}
