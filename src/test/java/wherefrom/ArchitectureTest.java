package wherefrom;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
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

  private static final Set<String> DOMAIN =
      Set.of("engine", "quantity", "parts", "inspection", "workings", "rules");
  private static final Set<String> JOB = plus(DOMAIN, "job", "files");

  /** The product's own packages that each may use. */
  private static final Map<String, Set<String>> OWN =
      Map.ofEntries(
          Map.entry("engine", Set.of()),
          Map.entry("quantity", Set.of()),
          Map.entry("parts", Set.of("engine", "quantity")),
          Map.entry("drawing", Set.of("engine", "parts")),
          Map.entry("inspection", Set.of("engine", "quantity", "parts", "workings")),
          Map.entry("workings", Set.of("quantity")),
          Map.entry("rules", Set.of("engine", "quantity", "parts", "inspection", "workings")),
          Map.entry("job", plus(DOMAIN, "files")),
          Map.entry("files", Set.of()),
          Map.entry("logbook", JOB),
          Map.entry("settings", JOB),
          Map.entry("pictures", Set.of()),
          Map.entry("scan", plus(JOB, "pictures")),
          Map.entry("sound", JOB),
          Map.entry("print", JOB),
          Map.entry("report", plus(JOB, "pictures", "drawing")),
          Map.entry("ui", plus(JOB, "drawing")),
          Map.entry("cli", JOB),
          Map.entry(
              "",
              plus(
                  JOB,
                  "pictures",
                  "logbook",
                  "settings",
                  "scan",
                  "sound",
                  "print",
                  "report",
                  "ui",
                  "cli")));

  /** The libraries that each may use besides the language's own basic packages. */
  private static final Map<String, List<String>> LIBRARIES =
      Map.ofEntries(
          Map.entry("workings", List.of("org.apache.commons.math3", "org.hipparchus")),
          Map.entry("job", List.of("java.nio.file", "java.io")),
          Map.entry(
              "logbook",
              List.of(
                  "java.nio",
                  "java.io",
                  "java.security",
                  "com.sun.nio.file",
                  "com.fasterxml.jackson",
                  "javax.imageio")),
          Map.entry("files", List.of("java.nio", "java.io")),
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
          Map.entry("sound", List.of("javax.sound", "java.io", "java.nio")),
          Map.entry(
              "print",
              List.of(
                  "java.nio",
                  "java.io",
                  "java.awt",
                  "javax.print",
                  "com.google.zxing",
                  "org.apache.pdfbox",
                  "org.apache.fontbox",
                  "com.fasterxml.jackson")),
          Map.entry(
              "report",
              List.of(
                  "java.nio",
                  "java.io",
                  "java.awt",
                  "javax.imageio",
                  "org.apache.pdfbox",
                  "org.apache.fontbox",
                  "com.fasterxml.jackson")),
          Map.entry("ui", List.of("java.nio", "java.io", "javafx")),
          Map.entry("cli", List.of("java.nio", "java.io", "com.fasterxml.jackson.core")));

  private static final List<String> BASIC =
      List.of(
          "java.lang",
          "java.util",
          "java.time",
          "java.math",
          "java.net",
          "java.text",
          "org.jspecify");

  private static Set<String> plus(Set<String> some, String... more) {
    return Stream.concat(some.stream(), Stream.of(more)).collect(Collectors.toUnmodifiableSet());
  }

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

  @Test
  void theRowsCoverEveryPackageAndTheTestSawTheCode() {
    Map<String, Integer> counts = new TreeMap<>();
    for (JavaClass type : CLASSES) {
      counts.merge(packageOf(type), 1, Integer::sum);
    }
    assertThat(OWN.keySet()).containsAll(counts.keySet());
    assertThat(CLASSES.size()).isGreaterThan(90);
    assertThat(counts.get("job")).isGreaterThan(40);
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

  @Test
  void thePackagesHaveNoCycles() {
    slices().matching("wherefrom.(*)..").should().beFreeOfCycles().check(CLASSES);
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
