package wherefrom;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;
import org.junit.jupiter.api.Test;

/** Who may use whom: one row a package; what a row does not list is forbidden. */
class ArchitectureTest {
  private static final JavaClasses CLASSES =
      new ClassFileImporter()
          .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
          .importPackages("wherefrom");

  private static final Path SOURCES = Path.of("src", "main", "java");

  private static final Set<String> FACE =
      Set.of(
          "text",
          "engine",
          "quantity",
          "parts",
          "inspection",
          "workings",
          "rules",
          "files",
          "demo",
          "job");

  private static final Set<String> SCREENS =
      Stream.concat(FACE.stream(), Stream.of("drawing")).collect(Collectors.toSet());

  /** The product's own packages that each uses; one that it uses no more leaves its row. */
  private static final Map<String, Set<String>> OWN =
      Map.ofEntries(
          Map.entry("text", Set.of()),
          Map.entry("engine", Set.of("text")),
          Map.entry("quantity", Set.of()),
          Map.entry("files", Set.of()),
          Map.entry("pictures", Set.of()),
          Map.entry("parts", Set.of("engine")),
          Map.entry("drawing", Set.of("engine", "parts")),
          Map.entry("workings", Set.of("quantity")),
          Map.entry("inspection", Set.of("text", "engine", "quantity", "parts", "workings")),
          Map.entry(
              "rules", Set.of("text", "engine", "quantity", "parts", "inspection", "workings")),
          Map.entry(
              "job",
              Set.of(
                  "text",
                  "engine",
                  "quantity",
                  "parts",
                  "inspection",
                  "workings",
                  "rules",
                  "files")),
          Map.entry("demo", Set.of("files")),
          // Entries hold amounts, subjects, a verdict's name and the machine shop's work.
          Map.entry(
              "logbook",
              Set.of("engine", "quantity", "parts", "inspection", "rules", "files", "job")),
          Map.entry("server", Set.of("files", "job", "logbook", "engine", "parts")),
          Map.entry("settings", Set.of("quantity", "files", "job")),
          Map.entry("scan", Set.of("parts", "files", "pictures", "job")),
          Map.entry("sound", Set.of("job")),
          Map.entry("phone", Set.of("inspection", "rules", "job")),
          Map.entry("pdf", Set.of("workings", "parts", "drawing", "files", "pictures", "job")),
          Map.entry("print", Set.of("text", "quantity", "parts", "files", "pdf", "job")),
          Map.entry(
              "report", Set.of("engine", "parts", "drawing", "inspection", "files", "pdf", "job")),
          Map.entry("ui", SCREENS),
          Map.entry("cli", FACE),
          Map.entry(
              "",
              Set.of(
                  "cli",
                  "files",
                  "job",
                  "logbook",
                  "parts",
                  "phone",
                  "print",
                  "report",
                  "scan",
                  "server",
                  "settings",
                  "sound",
                  "ui")));

  /** The libraries that each may use besides the language's own basic packages. */
  private static final Map<String, List<String>> LIBRARIES =
      Map.ofEntries(
          Map.entry("workings", List.of("org.hipparchus")),
          Map.entry("job", List.of("java.nio.file", "java.io")),
          Map.entry(
              "logbook",
              List.of(
                  "java.nio",
                  "java.io",
                  "java.security",
                  "com.sun.nio.file",
                  "com.fasterxml.jackson")),
          Map.entry(
              "server",
              List.of(
                  "java.nio",
                  "java.io",
                  "java.sql",
                  "javax.sql",
                  "com.zaxxer.hikari",
                  "org.flywaydb.core",
                  "org.postgresql")),
          Map.entry("files", List.of("java.nio", "java.io", "de.siegmar.fastcsv")),
          Map.entry("demo", List.of("java.nio", "java.io")),
          Map.entry(
              "pictures", List.of("java.nio", "java.io", "java.awt", "javax.imageio", "com.drew")),
          Map.entry("settings", List.of("java.nio", "java.io", "com.fasterxml.jackson")),
          Map.entry(
              "scan",
              List.of(
                  "java.nio",
                  "java.io",
                  "java.awt",
                  "javax.imageio",
                  "com.google.zxing",
                  "org.bytedeco",
                  "com.drew")),
          Map.entry("sound", List.of("javax.sound", "java.nio")),
          Map.entry(
              "print",
              List.of(
                  "java.nio",
                  "java.io",
                  "java.awt",
                  "com.google.zxing",
                  "org.apache.pdfbox",
                  "com.fasterxml.jackson")),
          Map.entry(
              "pdf", List.of("java.io", "java.awt", "org.apache.pdfbox", "org.apache.fontbox")),
          Map.entry("report", List.of("java.nio", "java.io")),
          Map.entry(
              "phone",
              List.of(
                  "java.nio",
                  "java.io",
                  "java.security",
                  "com.sun.net.httpserver",
                  "com.fasterxml.jackson.core",
                  "com.google.zxing")),
          Map.entry("ui", List.of("java.nio", "java.io", "javafx")),
          Map.entry(
              "cli", List.of("java.nio", "java.io", "com.fasterxml.jackson.core", "picocli")));

  private static final List<String> BASIC =
      List.of(
          "java.lang",
          "java.util",
          "java.time",
          "java.math",
          "java.net",
          "java.text",
          "org.jspecify");

  private static String packageOf(JavaClass type) {
    String name = type.getPackageName();
    if (!name.startsWith("wherefrom.")) {
      return "";
    }
    return name.split("\\.")[1];
  }

  private static boolean isOurs(JavaClass type) {
    return type.getPackageName().equals("wherefrom")
        || type.getPackageName().startsWith("wherefrom.");
  }

  @Test
  void everyPackageUsesOnlyWhatItsRowAllows() {
    List<String> wrong = new ArrayList<>();
    for (JavaClass type : CLASSES) {
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        if (!mayUse(packageOf(type), dependency.getTargetClass().getBaseComponentType())) {
          wrong.add(dependency.getDescription());
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  private static boolean mayUse(String from, JavaClass target) {
    if (target.isPrimitive()) {
      return true;
    }
    if (isOurs(target)) {
      String to = packageOf(target);
      return to.equals(from) || OWN.getOrDefault(from, Set.of()).contains(to);
    }
    String name = target.getPackageName();
    return from.isEmpty()
        || BASIC.stream().anyMatch(allowed -> isIn(name, allowed))
        || LIBRARIES.getOrDefault(from, List.of()).stream()
            .anyMatch(allowed -> isIn(name, allowed));
  }

  private static boolean isIn(String name, String allowed) {
    return name.equals(allowed) || name.startsWith(allowed + ".");
  }

  /** Every source file has its type here, and every row its package: none is stale. */
  @Test
  void theRowsAreThePackagesAndTheTestSawEverySourceFile() throws IOException {
    Set<String> seen = new TreeSet<>();
    Set<String> packages = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      packages.add(packageOf(type));
      if (!type.getName().contains("$")) {
        seen.add(type.getName());
      }
    }
    assertThat(OWN.keySet()).isEqualTo(packages);
    assertThat(packages).containsAll(LIBRARIES.keySet());
    assertThat(seen).isEqualTo(sourceTypes());
  }

  private static Set<String> sourceTypes() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .map(file -> SOURCES.relativize(file).toString())
          .map(name -> name.substring(0, name.length() - ".java".length()))
          .map(name -> name.replace(File.separatorChar, '.'))
          .collect(Collectors.toCollection(TreeSet::new));
    }
  }

  /** What a row allows and nobody uses any more is a stale word in it. */
  @Test
  void noRowAllowsWhatNobodyUses() {
    Map<String, Set<String>> unused = new TreeMap<>();
    OWN.forEach((from, allowed) -> unused.put(from, new TreeSet<>(allowed)));
    LIBRARIES.forEach((from, allowed) -> unused.get(from).addAll(allowed));
    for (JavaClass type : CLASSES) {
      Set<String> left = unused.get(packageOf(type));
      for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
        JavaClass target = dependency.getTargetClass().getBaseComponentType();
        String name = target.getPackageName();
        left.removeIf(word -> isOurs(target) ? word.equals(packageOf(target)) : isIn(name, word));
      }
    }
    unused.values().removeIf(Set::isEmpty);
    assertThat(unused).isEmpty();
  }

  @Test
  void modelsOfScreensDoNotTouchTheScene() {
    List<String> wrong = new ArrayList<>();
    for (JavaClass type : CLASSES) {
      if (packageOf(type).equals("ui") && type.getSimpleName().endsWith("Model")) {
        for (Dependency dependency : type.getDirectDependenciesFromSelf()) {
          if (dependency.getTargetClass().getPackageName().startsWith("javafx.scene")) {
            wrong.add(dependency.getDescription());
          }
        }
      }
    }
    assertThat(wrong).isEmpty();
  }

  /** Clocks, random numbers and the standard streams come in from outside, wired in one place. */
  @Test
  void onlyMainKnowsTheClockRandomNumbersAndTheStandardStreams() {
    Set<String> banned =
        Set.of(
            "java.time.Clock.systemUTC",
            "java.time.Clock.systemDefaultZone",
            "java.time.Instant.now",
            "java.time.LocalDate.now",
            "java.time.LocalDateTime.now",
            "java.lang.System.currentTimeMillis",
            "java.lang.Math.random");
    Set<String> wrong = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      if (packageOf(type).isEmpty()) {
        continue;
      }
      type.getMethodCallsFromSelf().stream()
          .filter(
              call ->
                  banned.contains(
                      call.getTargetOwner().getName() + "." + call.getTarget().getName()))
          .forEach(call -> wrong.add(call.getDescription()));
      type.getConstructorCallsFromSelf().stream()
          .filter(
              call ->
                  Set.of("java.util.Random", "java.security.SecureRandom")
                      .contains(call.getTargetOwner().getName()))
          .forEach(call -> wrong.add(call.getDescription()));
      type.getFieldAccessesFromSelf().stream()
          .filter(access -> access.getTargetOwner().getName().equals("java.lang.System"))
          .forEach(access -> wrong.add(access.getDescription()));
    }
    assertThat(wrong).isEmpty();
  }

  /** Each package for itself, and at every depth each with all that stands below it. */
  @Test
  void thePackagesHaveNoCycles() {
    slices().matching("wherefrom.(**)").should().beFreeOfCycles().check(CLASSES);
    for (String above : packagesAbove()) {
      slices()
          .matching(above + ".(*)..")
          .should()
          .beFreeOfCycles()
          .allowEmptyShould(false)
          .check(CLASSES);
    }
  }

  /** The packages that others stand below. */
  private static Set<String> packagesAbove() {
    Set<String> above = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      String name = type.getPackageName();
      while (name.contains(".")) {
        name = name.substring(0, name.lastIndexOf('.'));
        above.add(name);
      }
    }
    return above;
  }

  @Test
  void everyPackageIsNullMarked() {
    Set<String> unmarked = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      if (!type.getPackage().isAnnotatedWith(NullMarked.class)) {
        unmarked.add(type.getPackageName());
      }
    }
    assertThat(unmarked).isEmpty();
  }
}
