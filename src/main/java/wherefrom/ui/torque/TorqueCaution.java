package wherefrom.ui.torque;

import java.util.List;
import java.util.function.BiFunction;
import javafx.scene.layout.Region;
import wherefrom.job.Caution;

/** The caution of every torque, with its source, as rows of a list. */
final class TorqueCaution {
  private TorqueCaution() {}

  /**
   * Its rows.
   *
   * @param said makes rows of a heading and what is to be read under it
   */
  static List<Region> rows(BiFunction<String, String, List<Region>> said) {
    return said.apply("Caution", Caution.TORQUE.sourced());
  }
}
