package wherefrom.ui.settings;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The text of a license, as it comes with the program.
 *
 * @param file where it lies among the program's resources
 * @param of what it is the license of
 */
record LicenseText(String file, String title, String of) {
  private static final String FOLDER = "/wherefrom/licenses/";
  private static final String FONTS = "/wherefrom/fonts/";

  private static final String MISSING =
      "This text is missing: the program's package is not complete.";

  /** Between two columns; behind the end of a sentence two spaces are a habit of typing. */
  private static final Pattern COLUMNS = Pattern.compile("(?<=[^.!?:;,\\s])\\s{2,}(?=\\S)");

  static final String OUTRANKED =
      "Service information for your exact engine outranks this tool. So does a"
          + " qualified machinist.";

  /** The owner's own wording. */
  static final String QR =
      "QR Code is a registered trademark of DENSO WAVE INCORPORATED in Japan and in other"
          + " countries.";

  static final List<LicenseText> ALL =
      List.of(
          new LicenseText(FOLDER + "LICENSE", "Apache License 2.0", "Wherefrom"),
          new LicenseText(
              FOLDER + "THIRD-PARTY.txt", "Libraries", "what comes with it, and under which terms"),
          new LicenseText(FOLDER + "OTHERS.txt", "MIT and BSD", "tables, numbers, picture data"),
          new LicenseText(
              FOLDER + "GPL-2-CE.txt", "GPL 2 with Classpath Exception", "JavaFX, Java"),
          new LicenseText(FOLDER + "FFMPEG.txt", "FFmpeg and its parts", "the camera"),
          new LicenseText(FOLDER + "LGPL-3.txt", "Lesser GPL 3", "FFmpeg"),
          new LicenseText(FOLDER + "GPL-3.txt", "GPL 3", "the Lesser GPL rests on it"),
          new LicenseText(FOLDER + "MPL-2.0.txt", "Mozilla Public License 2.0", "a part of FFmpeg"),
          new LicenseText(FONTS + "B612-LICENSE.txt", "SIL Open Font License", "the font B612"),
          new LicenseText(FONTS + "DejaVu-LICENSE.txt", "DejaVu license", "the font DejaVu Sans"));

  /** Its paragraphs. */
  List<String> paragraphs() {
    return Stream.of(whole().replace("\r", "").replace("\f", "").split("\n\\s*\n"))
        .map(paragraph -> isTable(paragraph) ? sentences(paragraph) : paragraph)
        .map(paragraph -> paragraph.strip().replaceAll("\\s+", " "))
        .filter(paragraph -> !paragraph.isEmpty())
        .toList();
  }

  /** Whether all its lines have columns; a line that is set in goes on with the one above. */
  private static boolean isTable(String paragraph) {
    List<String> lines = lines(paragraph).toList();
    return lines.size() > 1 && lines.stream().allMatch(line -> COLUMNS.matcher(line).find());
  }

  private static Stream<String> lines(String paragraph) {
    return Stream.of(paragraph.replaceAll("\\n\\s+", " ").strip().split("\n"));
  }

  /** Run together, the columns of a table could not be told apart: each line is a sentence. */
  private static String sentences(String table) {
    return lines(table)
        .map(line -> COLUMNS.matcher(line).replaceFirst(": ").replaceAll("\\s{2,}", ", "))
        .map(line -> line.endsWith(".") ? line : line + ".")
        .collect(Collectors.joining(" "));
  }

  private String whole() {
    try (InputStream in = LicenseText.class.getResourceAsStream(file)) {
      return in == null ? MISSING : new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      return MISSING;
    }
  }
}
