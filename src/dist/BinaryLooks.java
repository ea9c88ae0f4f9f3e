import java.io.File;
import java.io.IOException;
import javafx.css.Stylesheet;

/** Reads a style sheet for the package, so that it need not be read at every start. */
final class BinaryLooks {
  private BinaryLooks() {}

  /**
   * Converts one file.
   *
   * @param arguments the style sheet; where its binary form goes, beside the other by its name
   */
  public static void main(String[] arguments) throws IOException {
    Stylesheet.convertToBinary(new File(arguments[0]), new File(arguments[1]));
  }
}
