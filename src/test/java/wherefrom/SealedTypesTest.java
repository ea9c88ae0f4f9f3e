package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.InstanceofCheck;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnit;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.ParameterizedType;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.junit.jupiter.api.Test;

/**
 * A kind that is new in a sealed type is handled wherever its type is, or does not come in. A type
 * that is told apart offers a method {@code match} with a function for each kind, or what draws it
 * a {@code Pen}; kinds of entries stand in tables ({@code job.EntryTable}).
 */
class SealedTypesTest {
  private static final String MATCH = "match";
  private static final ImportOption NO_TESTS = location -> !location.contains("test-classes");
  private static final JavaClasses CLASSES =
      new ClassFileImporter().withImportOption(NO_TESTS).importPackages("wherefrom");

  /** Where three kinds may be asked for one after the other, and why. */
  private static final Map<String, String> ALLOWED = Map.of();

  /** Three questions in one method are a chain, and what it leaves out is left out in silence. */
  @Test
  void noMethodTellsKindsApartByAChain() {
    Set<String> chains = new TreeSet<>();
    for (JavaClass type : CLASSES) {
      for (JavaCodeUnit unit : type.getCodeUnits()) {
        if (!unit.getName().equals(MATCH) && asksForThree(unit)) {
          chains.add(type.getSimpleName() + "." + unit.getName());
        }
      }
    }
    assertThat(chains).isEqualTo(new TreeSet<>(ALLOWED.keySet()));
  }

  private static boolean asksForThree(JavaCodeUnit unit) {
    Map<String, Set<String>> asked = new TreeMap<>();
    for (InstanceofCheck check : unit.getInstanceofChecks()) {
      String kind = check.getRawType().getName();
      if (kind.startsWith("wherefrom.")) {
        for (Class<?> family : families(check.getRawType().reflect())) {
          asked.computeIfAbsent(family.getName(), name -> new TreeSet<>()).add(kind);
        }
      }
    }
    return asked.values().stream().anyMatch(kinds -> kinds.size() >= 3);
  }

  /** The sealed types that a class is a kind of. */
  private static Set<Class<?>> families(Class<?> kind) {
    Set<Class<?>> families = new LinkedHashSet<>();
    for (Class<?> above : kind.getInterfaces()) {
      if (above.isSealed()) {
        families.add(above);
      }
      families.addAll(families(above));
    }
    return families;
  }

  /** Each function is given its own kind, and each kind has one. */
  @Test
  void everyMatchHasAFunctionForEveryKind() throws ReflectiveOperationException {
    List<Method> matches = matches();
    assertThat(matches).hasSizeGreaterThan(15);
    for (Method match : matches) {
      Class<?>[] kinds = match.getDeclaringClass().getPermittedSubclasses();
      assertThat(match.getParameterCount()).as("functions of %s", match).isEqualTo(kinds.length);
      for (Class<?> kind : kinds) {
        for (Class<?> each : concrete(kind)) {
          assertThat(functionFor(match, each)).as("%s of %s", each, match).isEqualTo(kind);
        }
      }
    }
  }

  private static List<Method> matches() {
    return CLASSES.stream()
        .filter(JavaClass::isInterface)
        .flatMap(type -> type.getMethods().stream())
        .filter(method -> method.getName().equals(MATCH))
        .map(JavaMethod::reflect)
        .toList();
  }

  /** The records of a kind that is itself sealed, or itself. */
  private static List<Class<?>> concrete(Class<?> kind) {
    return kind.isSealed()
        ? Arrays.stream(kind.getPermittedSubclasses())
            .flatMap(one -> concrete(one).stream())
            .toList()
        : List.of(kind);
  }

  /** The kind that the function is declared for which gets an instance of this class. */
  private static Object functionFor(Method match, Class<?> kind)
      throws ReflectiveOperationException {
    Object[] functions =
        Arrays.stream(match.getGenericParameterTypes())
            .map(type -> ((ParameterizedType) type).getActualTypeArguments()[0])
            .map(own -> (Function<Object, Object>) given -> own)
            .toArray();
    match.setAccessible(true);
    return match.invoke(instance(kind), functions);
  }

  /** An instance without its components: which function it comes to does not hang on them. */
  private static Object instance(Class<?> kind) throws ReflectiveOperationException {
    Class<?> maker = Class.forName("sun.misc.Unsafe");
    Field theOne = maker.getDeclaredField("theUnsafe");
    theOne.setAccessible(true);
    return maker.getMethod("allocateInstance", Class.class).invoke(theOne.get(null), kind);
  }
}
