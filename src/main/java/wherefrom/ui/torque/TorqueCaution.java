package wherefrom.ui.torque;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;

/** The caution of every torque, with its source, as rows of a list. */
final class TorqueCaution {
  private TorqueCaution() {}

  /**
   * Its rows: one, or where letters are large one for each sentence, which then fit any glass.
   *
   * @param said makes rows of a heading, which may be empty, and what is to be read under it
   */
  static List<Region> rows(boolean large, BiFunction<String, String, List<Region>> said) {
    String words = Caution.TORQUE.sourced();
    List<Region> rows = new ArrayList<>();
    for (String part : large ? words.split("(?<=\\.) ") : new String[] {words}) {
      rows.addAll(said.apply(rows.isEmpty() ? "Caution" : "", part));
    }
    return rows;
  }
}
