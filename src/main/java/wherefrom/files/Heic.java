package wherefrom.files;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;

/**
 * Pictures as many phones write them unless they are told otherwise (HEIF, ISO/IEC 23008-12). They
 * are not read here: what to do is said.
 */
public final class Heic {
  /** What to do, behind the file's name. */
  public static final String REMEDY =
      " is a HEIC picture. Set the phone's camera to JPEG, or send it as JPEG.";

  private static final int HEAD = 12;
  private static final int BRAND = 4;
  private static final Set<String> BRANDS =
      Set.of("ftypheic", "ftypheix", "ftyphevc", "ftypheim", "ftypheis", "ftypmif1", "ftypmsf1");

  private Heic() {}

  /** Whether bytes begin as such a file does. */
  public static boolean is(byte[] bytes) {
    return bytes.length >= HEAD
        && BRANDS.contains(new String(bytes, BRAND, HEAD - BRAND, StandardCharsets.US_ASCII));
  }

  /** The same of a file; one that cannot be read is none. */
  public static boolean is(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      return is(in.readNBytes(HEAD));
    } catch (IOException e) {
      return false;
    }
  }
}
