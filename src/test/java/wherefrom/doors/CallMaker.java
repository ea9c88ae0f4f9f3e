package wherefrom.doors;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wherefrom.cli.Shop;

/** Command lines of known commands and options with odd values; they write in one room only. */
final class CallMaker {
  private static final Pattern OPTION = Pattern.compile("(--[a-z-]+)(?:=([A-Za-z.]+))?");
  private static final Pattern PATH = Pattern.compile("F\\.\\w+|FILE.*|DIR|FOLDER|JOBS|PICTURE");

  /** A command and its options. */
  private record Known(List<String> name, List<String> options) {}

  private final List<Known> commands = new ArrayList<>();
  private final Set<String> paths = new HashSet<>(Set.of("--picture", "--layout-file"));
  private final Path room;
  private final String job;
  private final List<String> tags;

  CallMaker(Path room, String job, List<String> tags, String overview, Shop shop) {
    this.room = room;
    this.job = job;
    this.tags = tags;
    for (String line : overview.lines().filter(line -> line.matches(" {2}\\S.*")).toList()) {
      List<String> name = List.of(line.strip().split(" {2,}")[0].split(" "));
      List<String> asked = new ArrayList<>(name);
      asked.add("--help");
      List<String> options = new ArrayList<>();
      Matcher option = OPTION.matcher(shop.right(asked.toArray(String[]::new)).out());
      while (option.find()) {
        options.add(option.group(1));
        if (option.group(2) != null && PATH.matcher(option.group(2)).matches()) {
          paths.add(option.group(1));
        }
      }
      commands.add(new Known(name, options));
    }
  }

  List<String> make(Nonsense nonsense) {
    Known known = nonsense.one(commands);
    List<String> words = new ArrayList<>(known.name());
    if (known.options().contains("--job")) {
      words.addAll(List.of("--job", nonsense.below(20) == 0 ? room.toString() : job));
    }
    for (int more = nonsense.below(5); more > 0; more--) {
      String option = nonsense.one(known.options());
      if (!option.equals("--job")) {
        words.add(option);
        words.add(paths.contains(option) ? path(nonsense) : value(nonsense));
      }
    }
    while (nonsense.below(2) == 0) {
      words.add(operand(nonsense));
    }
    return words;
  }

  private String path(Nonsense nonsense) {
    return room.resolve("out-" + nonsense.below(4)).toString();
  }

  private String value(Nonsense nonsense) {
    return switch (nonsense.below(4)) {
      case 0 -> Integer.toString(nonsense.below(12));
      case 1 -> nonsense.one(List.of("roll-2x1", "pushrod", "0.5mm", "1in", "pass", "paid", "all"));
      default -> nonsense.text();
    };
  }

  private String operand(Nonsense nonsense) {
    return switch (nonsense.below(4)) {
      case 0 -> nonsense.one(tags);
      case 1 -> room.resolve("picture.png").toString();
      case 2 -> nonsense.one(List.of("-", "lobe@1EX", "1=0.5in", "new-flat-cam", "inline-6"));
      default -> nonsense.text();
    };
  }
}
