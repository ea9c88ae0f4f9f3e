package wherefrom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HandOverTest {
  private static final Path FILE = Path.of("launch of Größe.wherefrom.zip");

  @TempDir Path folder;
  private final BlockingQueue<List<Path>> taken = new LinkedBlockingQueue<>();

  private HandOver handOver() {
    return new HandOver(folder.resolve("cache"));
  }

  @Test
  void anOpenWindowTakesTheFiles() throws InterruptedException {
    handOver().take(taken::add);
    Path other = folder.resolve("other.wherefrom.zip");
    assertThat(handOver().give(List.of(FILE, other))).isTrue();
    assertThat(taken.poll(10, TimeUnit.SECONDS)).containsExactly(FILE.toAbsolutePath(), other);
    assertThat(handOver().give(List.of(other))).as("again and again").isTrue();
    assertThat(taken.poll(10, TimeUnit.SECONDS)).containsExactly(other);
  }

  @Test
  void withoutFilesAWindowOpens() {
    handOver().take(taken::add);
    assertThat(handOver().give(List.of())).isFalse();
    assertThat(taken).isEmpty();
  }

  @Test
  void whereNoWindowIsOpenNobodyTakesThem() throws IOException {
    assertThat(handOver().give(List.of(FILE))).isFalse();
    Files.createFile(Files.createDirectory(folder.resolve("cache")).resolve("window.socket"));
    assertThat(handOver().give(List.of(FILE))).as("left behind").isFalse();
    handOver().take(taken::add);
    assertThat(handOver().give(List.of(FILE))).as("taken from now on").isTrue();
  }

  @Test
  void theFirstWindowGoesOnTaking() {
    BlockingQueue<List<Path>> second = new LinkedBlockingQueue<>();
    handOver().take(taken::add);
    handOver().take(second::add);
    assertThat(handOver().give(List.of(FILE))).isTrue();
    assertThat(second).isEmpty();
    assertThat(taken).hasSize(1);
  }

  @Test
  void wherePathsAreTooLongForSocketsEachStartOpensAWindow() {
    HandOver deep = new HandOver(folder.resolve("x".repeat(200)));
    deep.take(taken::add);
    assertThat(deep.give(List.of(FILE))).isFalse();
  }
}
