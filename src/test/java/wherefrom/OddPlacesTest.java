package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The program in a folder of an odd name, and where the system knows no home: in a Java of its own.
 */
class OddPlacesTest {
  private static final String CLASS_PATH = System.getProperty("java.class.path");

  @TempDir Path folder;

  /** Says where this program keeps things: run in a Java of its own. */
  static final class Say {
    public static void main(String[] arguments) {
      System.out.println(Wiring.folders().settings());
      System.out.println(Wiring.services(Clock.systemUTC()).settings().load().shop());
    }
  }

  private List<String> run(String... words) throws IOException, InterruptedException {
    return run(0, words);
  }

  private List<String> run(int wanted, String... words) throws IOException, InterruptedException {
    List<String> call = new ArrayList<>();
    call.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    call.add("-XX:TieredStopAtLevel=1");
    call.addAll(List.of(words));
    Path said = folder.resolve("said.txt");
    Process process =
        new ProcessBuilder(call)
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    int status = process.waitFor();
    List<String> lines = Files.readAllLines(said, StandardCharsets.UTF_8);
    assertThat(status).as(lines.toString()).isEqualTo(wanted);
    return lines;
  }

  private static Path classes() throws URISyntaxException {
    return Path.of(Main.class.getProtectionDomain().getCodeSource().getLocation().toURI());
  }

  private void jar(Path jar) throws IOException, URISyntaxException {
    Path classes = classes();
    try (OutputStream out = Files.newOutputStream(jar);
        ZipOutputStream zip = new ZipOutputStream(out);
        Stream<Path> files = Files.walk(classes)) {
      zip.setLevel(0);
      for (Path file : files.filter(each -> !each.equals(classes)).toList()) {
        String name = classes.relativize(file).toString().replace('\\', '/');
        boolean isFolder = Files.isDirectory(file);
        zip.putNextEntry(new ZipEntry(isFolder ? name + "/" : name));
        if (!isFolder) {
          Files.copy(file, zip);
        }
      }
    }
  }

  /** The finished program's class path, its own classes in a jar in this folder. */
  private String classPath(String name) throws Exception {
    Path jar = Files.createDirectories(folder.resolve(name)).resolve("wherefrom.jar");
    jar(jar);
    List<String> path = new ArrayList<>(List.of(jar.toString()));
    Arrays.stream(CLASS_PATH.split(File.pathSeparator))
        .filter(each -> each.endsWith(".jar"))
        .forEach(path::add);
    return String.join(File.pathSeparator, path);
  }

  @ParameterizedTest
  @ValueSource(strings = {"my tools", "50% off! #1 ü", "!new"})
  void aJarInAFolderOfAnOddNameHasItsLabelStockAndItsDemo(String name) throws Exception {
    String classPath = classPath(name);
    String home = "-Dwherefrom.home=" + folder.resolve("home");
    String main = Main.class.getName();
    assertThat(run(home, "-cp", classPath, main, "stocks"))
        .anyMatch(line -> line.startsWith("a4-3x8-63.5x33.9"));
    run(home, "-cp", classPath, main, "demo", "--folder", "copy");
    assertThat(folder.resolve("copy/logbook-0001.jsonl")).isNotEmptyFile();
    assertThat(folder.resolve("copy/photos")).isNotEmptyDirectory();
  }

  @ParameterizedTest
  @ValueSource(strings = {"tools!", "tools!/bin"})
  void whereJavaFindsNothingInTheJarThatIsSaid(String name) throws Exception {
    assertThat(run(2, "-cp", classPath(name), Main.class.getName(), "stocks"))
        .containsExactly(
            "Wherefrom lies in the folder \"tools!\". Java finds nothing in a folder whose name ends"
                + " with \"!\": rename it, or move Wherefrom.");
  }

  @ParameterizedTest
  @ValueSource(strings = {"?", ""})
  void withoutAHomeThingsLieWhereTheProgramWasStarted(String home) throws Exception {
    List<String> said = run("-Duser.home=" + home, "-cp", CLASS_PATH, Say.class.getName());
    Path here = folder.toRealPath();
    assertThat(said).isEqualTo(foldersBelow(here));
  }

  @Test
  void aHomeThatIsThereIsUsed() throws Exception {
    Path home = Files.createDirectory(folder.resolve("home"));
    assertThat(run("-Duser.home=" + home, "-cp", CLASS_PATH, Say.class.getName()))
        .isEqualTo(foldersBelow(home));
  }

  /** Settings and jobs, where this system wants them below a home that holds nothing yet. */
  private static List<String> foldersBelow(Path home) {
    HomeFolders folders =
        HomeFolders.of(System.getProperty("os.name"), System.getenv(), home, old -> false);
    assertThat(folders.settings()).startsWithRaw(home);
    return List.of(folders.settings().toString(), folders.shop().toString());
  }
}
