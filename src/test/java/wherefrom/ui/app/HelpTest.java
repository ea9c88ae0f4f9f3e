package wherefrom.ui.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What every screen says to do now. */
class HelpTest {
  private static final Path CLASSES =
      Path.of(System.getProperty("wherefrom.target", "target"), "classes");
  private static final int MOST_SENTENCES = 3;
  private static final int MOST_WORDS = 12;

  private static Class<? extends Screen> screen(Path file) {
    String name = CLASSES.relativize(file).toString().replace(".class", "");
    try {
      return Class.forName(name.replace(file.getFileSystem().getSeparator(), "."))
          .asSubclass(Screen.class);
    } catch (ClassNotFoundException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Class<? extends Screen>> screens() throws IOException {
    try (Stream<Path> files = Files.walk(CLASSES.resolve("wherefrom/ui"))) {
      return files
          .filter(file -> file.getFileName().toString().matches("\\w+Screen\\.class"))
          .filter(file -> !file.getFileName().toString().equals("Screen.class"))
          .<Class<? extends Screen>>map(HelpTest::screen)
          .toList();
    }
  }

  @Test
  void everyScreenSaysWhatToDoNow() throws IOException {
    assertThat(screens()).isNotEmpty();
    assertThat(screens()).allMatch(Help::isWritten);
  }

  @Test
  void inThreeSentencesThatAreReadAtAGlance() throws IOException {
    for (Class<? extends Screen> screen : screens()) {
      List<String> sentences = Help.of(screen).sentences();
      assertThat(sentences).hasSizeBetween(1, MOST_SENTENCES);
      assertThat(sentences)
          .as(screen.getSimpleName())
          .allMatch(sentence -> Help.plain(sentence).split(" ").length <= MOST_WORDS)
          .allMatch(sentence -> sentence.endsWith("."));
    }
  }

  /** What is pressed by its name stands in brackets, so that it is looked for on the glass. */
  @Test
  void aKeyThatIsToBePressedStandsInBrackets() throws IOException {
    for (Class<? extends Screen> screen : screens()) {
      assertThat(Help.of(screen).sentences())
          .as(screen.getSimpleName())
          .noneMatch(sentence -> sentence.matches("(?:.*\\b)?[Pp]ress [A-Z].*"));
    }
  }

  @Test
  void aSentenceAboutAKeyIsSaidOnlyWhereThatKeyIs() {
    Help help = new Help(List.of("Read it.", "Then press [Done]."));
    assertThat(help.where(List.of("Done", "Back")).sentences())
        .containsExactly("Read it.", "Then press Done.");
    assertThat(help.where(List.of("Back")).sentences()).containsExactly("Read it.");
    assertThat(new Help(List.of("[Yes] does it.")).where(List.of()).sentences()).isNotEmpty();
  }
}
