package wherefrom.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.tngtech.archunit.core.domain.InstanceofCheck;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Field;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wherefrom.job.entry.JobEntry;
import wherefrom.job.entry.NoteAdded;
import wherefrom.job.entry.PartFound;
import wherefrom.job.entry.PartOut;

/** Who reads which kind of entry. A new kind fails here until it is said for every reader. */
class EntryReadersTest {
  private static final ImportOption NO_TESTS = location -> !location.contains("test-classes");
  private static final JavaClasses CLASSES =
      new ClassFileImporter().withImportOption(NO_TESTS).importPackages("wherefrom");

  /**
   * The file lists every kind with those that read it. Where a kind is new, go through all readers
   * that the file names, give each a row that has something to say of it, then add the kind's line.
   * Tables that are whole are not named: they cannot be made without a row for every kind. Who asks
   * for a kind by {@code instanceof} or {@code isInstance} is named beside those that have a table.
   */
  @Test
  void everyKindIsReadByThoseThatTheListNames() throws Exception {
    List<String> actual = new ArrayList<>();
    readersByKind()
        .forEach((kind, readers) -> actual.add((kind + ": " + String.join(", ", readers)).strip()));
    assertThat(actual).isEqualTo(listed());
  }

  private static List<String> listed() throws IOException {
    try (InputStream in = EntryReadersTest.class.getResourceAsStream("entry-readers.txt")) {
      String text = new String(Objects.requireNonNull(in).readAllBytes(), StandardCharsets.UTF_8);
      return text.lines().filter(line -> !line.startsWith("#")).toList();
    }
  }

  private static Map<String, Set<String>> readersByKind() throws ReflectiveOperationException {
    Map<String, Set<String>> readers = new TreeMap<>();
    for (Class<?> kind : JobEntry.class.getPermittedSubclasses()) {
      readers.put(kind.getSimpleName(), new TreeSet<>());
    }
    for (JavaField field : readerFields()) {
      Set<Class<? extends JobEntry>> kinds = reader(field).kinds();
      if (kinds.size() < readers.size()) {
        String name = field.getOwner().getSimpleName();
        kinds.forEach(kind -> readers.get(kind.getSimpleName()).add(name));
      }
    }
    CLASSES.forEach(type -> addAsked(type, readers));
    return readers;
  }

  /** Who asks for one kind, or for the few that are an interface of their own. */
  private static void addAsked(JavaClass type, Map<String, Set<String>> readers) {
    String name = type.getName().replaceFirst(".*\\.", "").replaceFirst("\\$.*", "");
    for (InstanceofCheck check : type.getInstanceofChecks()) {
      for (Class<?> kind : JobEntry.class.getPermittedSubclasses()) {
        if (isOfSome(check.getRawType()) && check.getRawType().reflect().isAssignableFrom(kind)) {
          readers.get(kind.getSimpleName()).add(name);
        }
      }
    }
    if (asksClasses(type)) {
      type.getReferencedClassObjects().stream()
          .map(object -> object.getRawType().getSimpleName())
          .filter(readers::containsKey)
          .forEach(kind -> readers.get(kind).add(name));
    }
  }

  /** {@code PartOut.class::isInstance} asks as well. */
  private static boolean asksClasses(JavaClass type) {
    return type.getMethodReferencesFromSelf().stream()
        .anyMatch(
            reference ->
                reference.getTargetOwner().isEquivalentTo(Class.class)
                    && reference.getTarget().getName().equals("isInstance"));
  }

  /** Whether it is a kind of entry, or an interface of some of them. */
  private static boolean isOfSome(JavaClass type) {
    return type.getPackageName().equals(JobEntry.class.getPackageName())
        && !type.isEquivalentTo(JobEntry.class);
  }

  private static List<JavaField> readerFields() {
    return CLASSES.stream()
        .flatMap(type -> type.getFields().stream())
        .filter(field -> field.getRawType().isAssignableTo(EntryReader.class))
        .filter(field -> field.getModifiers().contains(JavaModifier.STATIC))
        .toList();
  }

  private static EntryReader reader(JavaField field) throws ReflectiveOperationException {
    Field reflected = field.reflect();
    reflected.setAccessible(true);
    return (EntryReader) reflected.get(null);
  }

  /** One that stood elsewhere would not be seen here. */
  @Test
  void everyReaderStandsInAStaticField() {
    List<String> elsewhere =
        CLASSES.stream()
            .flatMap(EntryReadersTest::makers)
            .filter(made -> !made.contains("<clinit>"))
            .toList();
    assertThat(elsewhere).isEmpty();
    assertThat(readerFields()).isNotEmpty();
  }

  private static Stream<String> makers(JavaClass type) {
    boolean own = type.isAssignableTo(EntryReader.class) || type.isAssignableTo(EntryRows.class);
    return own
        ? Stream.empty()
        : Stream.concat(
            type.getMethodCallsFromSelf().stream()
                .filter(
                    call -> call.getTarget().getRawReturnType().isAssignableTo(EntryReader.class))
                .map(call -> call.getOrigin().getFullName()),
            type.getConstructorCallsFromSelf().stream()
                .filter(call -> call.getTargetOwner().isAssignableTo(EntryReader.class))
                .map(call -> call.getOrigin().getFullName()));
  }

  @Test
  void aWholeTableHasARowForEveryKind() {
    EntryRows<String, String> one =
        EntryRows.<String, String>none().on(PartOut.class, (told, out) -> told + out.item());
    assertThatThrownBy(one::whole)
        .isInstanceOf(IllegalStateException.class)
        .hasMessageContaining("NoteAdded")
        .hasMessageNotContaining("PartOut");
    assertThat(one.others("?").of("no. ", new PartOut(7))).isEqualTo("no. 7");
    assertThat(one.others("?").of("no. ", new NoteAdded(7, "worn"))).isEqualTo("?");
  }

  @Test
  void noKindHasTwoRows() {
    EntryRows<String, String> one =
        EntryRows.<String, String>none().on(PartOut.class, (told, out) -> told);
    assertThatThrownBy(() -> one.and(one)).hasMessageContaining("PartOut");
    EntryFold<List<JobEntry>> fold =
        EntryFold.<List<JobEntry>>none().on(PartFound.class, List::add);
    assertThatThrownBy(() -> fold.on(PartFound.class, List::add)).hasMessageContaining("PartFound");
  }
}
