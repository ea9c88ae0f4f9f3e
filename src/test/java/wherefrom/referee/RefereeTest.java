package wherefrom.referee;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The referee itself: it knows nothing of the program, and it can say no. */
class RefereeTest {
  private static final Set<Class<?>> KNOWS_NOTHING =
      Set.of(
          Act.class,
          Causes.class,
          Cuts.class,
          Kind.class,
          Marks.class,
          Mates.class,
          Motor.class,
          Piece.class,
          Referee.class,
          Rulebook.class,
          Scene.class,
          Slot.class,
          Story.class);

  @Test
  void itSharesNoCodeWithTheProgram() {
    Set<String> used = new TreeSet<>();
    for (JavaClass type : new ClassFileImporter().importClasses(KNOWS_NOTHING)) {
      type.getDirectDependenciesFromSelf().stream()
          .map(it -> it.getTargetClass().getBaseComponentType().getPackageName())
          .filter(name -> name.startsWith("wherefrom"))
          .forEach(used::add);
    }
    assertThat(used).containsExactly("wherefrom.referee");
  }

  @ParameterizedTest
  @EnumSource(Liar.Lie.class)
  void aFaultInTheProgramIsFound(Liar.Lie lie) {
    Engines engine = Engines.twoCylinders(false);
    Bout start = engine.apart(new Liar(engine.motor(), engine.layout(), lie));
    Optional<Trial> found =
        LongStream.range(0, lie.within)
            .mapToObj(seed -> Trial.play(start, engine.motor(), seed))
            .flatMap(Optional::stream)
            .findFirst();
    assertThat(found).isPresent();
    assertThat(found.get().shrunk(start).acts()).hasSizeBetween(1, 3);
  }
}
