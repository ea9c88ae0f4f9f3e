package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** A name that a newcomer searches for leads to one type, whatever package it is in. */
class OneNameOneTypeTest {
  private static final Path SOURCES = Path.of("src", "main", "java");

  /** Fewer means that the search went past most of the program. */
  private static final int FEWEST_TYPES = 1_500;

  /** The path of each file by the name of its type: the compiler holds them to be the same. */
  private static Map<String, List<Path>> typesByName() throws IOException {
    try (Stream<Path> files = Files.walk(SOURCES)) {
      return files
          .filter(file -> file.toString().endsWith(".java"))
          .filter(Predicate.not(file -> file.getFileName().toString().contains("-info.")))
          .collect(
              Collectors.groupingBy(
                  file -> file.getFileName().toString(), TreeMap::new, Collectors.toList()));
    }
  }

  @Test
  void noTwoTypesShareASimpleName() throws IOException {
    Map<String, List<Path>> types = typesByName();
    assertThat(types).hasSizeGreaterThan(FEWEST_TYPES);
    assertThat(types.values()).allSatisfy(paths -> assertThat(paths).hasSize(1));
  }
}
