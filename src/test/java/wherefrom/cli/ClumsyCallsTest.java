package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every command, called every wrong way: always a sentence, never a fault, nothing lost. */
class ClumsyCallsTest {
  private static final List<String> ODD =
      List.of("", "x", "-1", "99999999999999999999", "ä部🔩", "a\0b");

  @TempDir Path folder;
  private Shop shop;
  private String job;
  private List<Command> commands = List.of();

  @BeforeEach
  void begin() {
    shop = new Shop(folder.resolve("shop"));
    job = shop.begin("engine");
    commands = Commands.all();
  }

  /** The command with every option it needs. */
  private List<String> words(Command command, String jobFolder, String value) {
    List<String> words = new ArrayList<>(List.of(command.name().split(" ")));
    for (Option option : command.options()) {
      if (option.required()) {
        words.add(
            option.name()
                + "="
                + (option.name().equals("--job") ? jobFolder : given(option, value)));
      }
    }
    return words;
  }

  /** What names a file or a folder lies in the test's own folder: nothing is written beside it. */
  private String given(Option option, String value) {
    boolean names = option.value().matches("DIR|FOLDER|SHOP|(F|FILE)([.].+)?");
    boolean relative = !value.isEmpty() && value.indexOf(0) < 0 && !Path.of(value).isAbsolute();
    return names && relative ? folder.resolve("odd").resolve(value).toString() : value;
  }

  private static Set<String> here() {
    String[] names = new File("").getAbsoluteFile().list();
    return Set.of(names == null ? new String[0] : names);
  }

  @AfterEach
  void nothingIsWrittenWhereTheTestRuns() {
    assertThat(here()).isEqualTo(before);
  }

  private static boolean hasJob(Command command) {
    return command.options().stream()
        .anyMatch(option -> option.name().equals("--job") && option.required());
  }

  private final Set<String> before = here();
  private final List<String> wrong = new ArrayList<>();

  /** Notes what is no plain answer. */
  private Shop.Outcome call(List<String> words) {
    Shop.Outcome outcome = shop.runWith("x\n\n1 2 3\n", words.toArray(String[]::new));
    String first = outcome.err().lines().findFirst().orElse("");
    boolean sentence = first.matches(".{8,}[.:?]") || outcome.status() != 2;
    boolean fault =
        Stream.of("Exception", "\tat ", "fault in Wherefrom").anyMatch(outcome.err()::contains);
    if (fault || !sentence || outcome.status() < 0 || outcome.status() > 2) {
      wrong.add(words + " gave " + outcome);
    }
    return outcome;
  }

  private void refused(List<String> words) {
    Shop.Outcome outcome = call(words);
    if (outcome.status() != 2 || outcome.err().contains("null")) {
      wrong.add(words + " gave " + outcome);
    }
  }

  @Test
  void aFolderThatIsNoJobIsRefused() throws IOException {
    Path empty = Files.createDirectories(folder.resolve("empty"));
    Path file = Files.writeString(folder.resolve("file"), "x");
    Path junk = Files.createDirectories(folder.resolve("junk"));
    Files.writeString(junk.resolve("logbook-0001.jsonl"), "not a logbook\n");
    Map<String, String> before = Shop.contents(folder);
    for (Command command : commands.stream().filter(ClumsyCallsTest::hasJob).toList()) {
      for (Path other : List.of(folder.resolve("none"), empty, file)) {
        List<String> words = words(command, other.toString(), folder.resolve("new") + "");
        words.addAll(command.operands().isEmpty() ? List.of() : List.of("123456", "654321"));
        refused(words);
      }
      List<String> words = words(command, junk.toString(), folder.resolve("new") + "");
      words.addAll(command.operands().isEmpty() ? List.of() : List.of("123456", "654321"));
      call(words);
    }
    assertThat(wrong).isEmpty();
    Map<String, String> after = Shop.contents(folder);
    after.keySet().removeIf(each -> each.startsWith(junk.resolve("logbook.lock").toString()));
    assertThat(after).isEqualTo(before);
  }

  @Test
  void optionsThatAreMissingUnknownOrTwiceAreRefused() {
    for (Command command : commands) {
      List<String> name = List.of(command.name().split(" "));
      if (command.options().stream().anyMatch(Option::required)) {
        refused(name);
      }
      List<String> unknown = words(command, job, "1");
      unknown.add("--color");
      refused(unknown);
      for (Option option : command.options()) {
        List<String> without = words(command, job, "1");
        without.removeIf(word -> word.startsWith(option.name() + "="));
        without.add(option.name());
        if (!option.isFlag()) {
          refused(without);
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  @Test
  void oddValuesNeverMakeAFault() {
    for (Command command : commands) {
      for (String odd : ODD) {
        List<String> required = words(command, job, odd);
        call(required);
        required.addAll(List.of(odd, odd));
        call(required);
        for (Option option : command.options()) {
          if (!option.required() && !option.isFlag()) {
            List<String> words = words(command, job, "1");
            words.add(option.name() + "=" + given(option, odd));
            call(words);
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
  }
}
