package wherefrom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The samples of pages that a shell runs: their blocks that are marked {@code sh}. */
final class PageSamples {
  private static final Pattern BLOCK = Pattern.compile("(?ms)^```sh\n(.*?)^```$");
  private static final Pattern OURS = Pattern.compile("(?m)^(.*\\| )?wherefrom ");

  private final List<String> samples = new ArrayList<>();

  private PageSamples() {}

  /** Those that run the program, in the order of the pages. */
  static PageSamples ofProgram(List<Path> pages) throws IOException {
    return of(pages, OURS);
  }

  /** All of them. */
  static PageSamples ofShell(Path page) throws IOException {
    return of(List.of(page), Pattern.compile(""));
  }

  private static PageSamples of(List<Path> pages, Pattern wanted) throws IOException {
    PageSamples all = new PageSamples();
    for (Path page : pages) {
      Matcher block = BLOCK.matcher(Files.readString(page));
      while (block.find()) {
        if (wanted.matcher(block.group(1)).find()) {
          all.samples.add(block.group(1));
        }
      }
    }
    return all;
  }

  int count() {
    return samples.size();
  }

  /** A script that runs them in order and ends where one of them fails. */
  String script(FinishedProgram program) {
    StringBuilder script = new StringBuilder("set -euo pipefail\n");
    script.append("wherefrom() { '" + String.join("' '", program.words()) + "' \"$@\"; }\n");
    samples.forEach(script::append);
    return script.toString();
  }
}
