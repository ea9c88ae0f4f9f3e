package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.reflect.Method;
import java.net.URI;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * What the package is made from does as the compiler's own classes do: every form of lambda in
 * {@code Forms.java} is made and called before and after {@code src/dist/PlainLambdas.java} wrote
 * it as a plain class.
 */
class PlainLambdasTest {
  private static final Path TOOL = Path.of("src/dist/PlainLambdas.java");
  private static final Path FORMS = Path.of("src/test/resources/wherefrom/dist/Forms.java");
  private static final String PLAIN = "$$Plain";

  @TempDir Path folder;
  private Path compiled;
  private Path converted;

  /** A form as it was made, and what its call gave. */
  private record Called(String madeBy, Object gave) {}

  @BeforeEach
  void convert() throws Exception {
    compiled = Files.createDirectories(folder.resolve("compiled"));
    converted = folder.resolve("converted");
    Path tool = Files.createDirectories(folder.resolve("tool"));
    compile(FORMS, compiled, "");
    Files.writeString(compiled.resolve("beside.txt"), "no class");
    Path asm = asm();
    compile(TOOL, tool, asm.toString());
    try (URLClassLoader loader =
        new URLClassLoader(new URL[] {url(tool), url(asm)}, ClassLoader.getPlatformClassLoader())) {
      Method main = loader.loadClass("PlainLambdas").getDeclaredMethod("main", String[].class);
      main.setAccessible(true);
      main.invoke(null, (Object) new String[] {compiled.toString(), converted.toString()});
    }
  }

  private static Path asm() throws Exception {
    Class<?> reader = Class.forName("org.objectweb.asm.ClassReader");
    URI jar = reader.getProtectionDomain().getCodeSource().getLocation().toURI();
    return Path.of(jar);
  }

  private static URL url(Path path) throws IOException {
    return path.toUri().toURL();
  }

  private static void compile(Path source, Path to, String with) {
    StringWriter said = new StringWriter();
    List<String> options =
        List.of("--release", "17", "-proc:none", "-nowarn", "-classpath", with, "-d", to + "");
    var compiler = Objects.requireNonNull(ToolProvider.getSystemJavaCompiler());
    var files = compiler.getStandardFileManager(null, null, null);
    boolean done =
        compiler
            .getTask(
                new PrintWriter(said), files, null, options, null, files.getJavaFileObjects(source))
            .call();
    assertThat(done).as(said.toString()).isTrue();
  }

  /** Makes and calls every form with the classes of a folder. */
  private static Map<String, Called> call(Path classes) throws Exception {
    try (URLClassLoader loader =
        new URLClassLoader(new URL[] {url(classes)}, ClassLoader.getPlatformClassLoader())) {
      Object forms = loader.loadClass("forms.Forms").getMethod("all").invoke(null);
      Map<String, Called> called = new LinkedHashMap<>();
      for (Map.Entry<?, ?> one : ((Map<?, ?>) forms).entrySet()) {
        Object form = one.getValue();
        Object made = form.getClass().getMethod("made").invoke(form);
        Object call = form.getClass().getMethod("call").invoke(form);
        String gave = String.valueOf(((Callable<?>) call).call());
        called.put(String.valueOf(one.getKey()), new Called(made.getClass().getName(), gave));
      }
      return called;
    }
  }

  private static Map<String, Object> gave(Map<String, Called> called) {
    Map<String, Object> gave = new TreeMap<>();
    called.forEach((name, one) -> gave.put(name, one.gave()));
    return gave;
  }

  @Test
  void everyFormGivesWhatItGaveBefore() throws Exception {
    Map<String, Called> before = call(compiled);
    Map<String, Called> after = call(converted);
    assertThat(before).hasSizeGreaterThan(35);
    assertThat(gave(after)).isEqualTo(gave(before));
    assertThat(gave(after))
        .containsEntry("captures of every width", "7 1099511627776 2.5x3truetext5")
        .containsEntry("captures its object", "field1field2")
        .containsEntry("a bound reference to null", "refused")
        .containsEntry("one for all", "true")
        .containsEntry("throws what is checked", "java.io.IOException: thrown")
        .containsEntry("in a default method", "Dear reader,")
        .containsEntry("the method of a super class", "outer 5")
        .containsEntry("KEPT serializable", "kept!")
        .containsEntry("KEPT intersection", "kepttrue");
  }

  @Test
  void everyFormIsAPlainClassSaveThoseThatCannotBe() throws Exception {
    assertThat(call(compiled).values()).noneMatch(one -> one.madeBy().contains(PLAIN));
    call(converted)
        .forEach(
            (name, one) ->
                assertThat(one.madeBy().contains(PLAIN)).as(name).isEqualTo(isPlain(name, one)));
  }

  /** A default method of the library makes its own. */
  private static boolean isPlain(String name, Called one) {
    return !name.startsWith("KEPT") && !one.madeBy().startsWith("java.util.");
  }

  @Test
  void whatIsNoClassGoesOverAsItIsAndTheSameClassesComeOutAgain() throws Exception {
    assertThat(converted.resolve("beside.txt")).hasContent("no class");
    Map<String, String> once = contents();
    convert();
    assertThat(contents()).isEqualTo(once);
  }

  private Map<String, String> contents() throws IOException {
    Map<String, String> contents = new TreeMap<>();
    try (Stream<Path> files = Files.walk(converted)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        contents.put(
            converted.relativize(file).toString(),
            java.util.HexFormat.of().formatHex(Files.readAllBytes(file)));
      }
    }
    return contents;
  }
}
