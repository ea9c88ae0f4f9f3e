package wherefrom.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Commands and options as they were called before: a script that knows them goes on working. */
final class OldWords {
  private static final Map<String, String> COMMANDS =
      Map.of(
          "take-back", "undo",
          "cycles", "swaps",
          "missing", "to-fit",
          "excuse", "leave-empty",
          "close", "finish");

  private static final Map<String, String> MONEY = Map.of("out", "export", "in", "import");

  private static final Map<String, Map<String, String>> OPTIONS =
      Map.of(
          "plan answer", Map.of("--look", "--answer"),
          "debris opened", Map.of("--look", "--answer"),
          "tray out", Map.of("--show", "--preview"),
          "plan change", Map.of("--only-show", "--preview"),
          "plan numbers", Map.of("--what-if", "--idea"),
          "timing set", Map.of("--stated-lift", "--checking-lift"),
          "decide ask", Map.of("doubtful", "suspect"),
          "retag propose", Map.of("--by", "--with"),
          "retag accept", Map.of("--by", "--with"));

  private OldWords() {}

  /** The call in the words of today; never empty. */
  static List<String> today(List<String> words) {
    List<String> call = new ArrayList<>(words);
    call.set(0, COMMANDS.getOrDefault(call.get(0), call.get(0)));
    if (call.size() > 1 && call.get(0).equals("money")) {
      call.set(1, MONEY.getOrDefault(call.get(1), call.get(1)));
    }
    String name = String.join(" ", call.subList(0, Math.min(2, call.size())));
    Map<String, String> options = OPTIONS.getOrDefault(name, Map.of());
    call.replaceAll(word -> today(word, options));
    return call;
  }

  /** {@code --look=pass} is {@code --answer=pass}. */
  private static String today(String word, Map<String, String> options) {
    int end = word.indexOf('=') < 0 ? word.length() : word.indexOf('=');
    String option = word.substring(0, end);
    return options.getOrDefault(option, option) + word.substring(end);
  }
}
