package wherefrom.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wherefrom.parts.TagCode;
import wherefrom.scan.grease.PhotographFiles;

/** A folder of photographs of 2, 8 and 12 megapixels, read in a process with 512 MB of heap. */
class ManyPhotographsTest {
  private static final int[] WIDTHS = {1632, 3264, 4000};
  private static final String HEAP = "-Xmx512m";

  /** Heap, code and all else that the process has. */
  private static final long MOST = 512L * 1024 * 1024;

  @TempDir Path folder;

  private Shop shop;
  private Path camera;
  private String job;
  private int tagged;

  @BeforeEach
  void begin() throws IOException {
    shop = new Shop(folder);
    job = shop.begin("launch");
    camera = Files.createDirectory(folder.resolve("camera"));
  }

  @Test
  void sixOfThreeSizesAreFiled() throws IOException, InterruptedException {
    isKept(6);
  }

  @Test
  @Tag("soak")
  void fiveHundredOfThreeSizesAreFiled() throws IOException, InterruptedException {
    isKept(Integer.getInteger("photographs", 500));
  }

  private void isKept(int count) throws IOException, InterruptedException {
    photographs(count);
    long begun = System.nanoTime();
    Said said = read();
    double seconds = (System.nanoTime() - begun) / 1e9;
    System.out.printf(
        Locale.ROOT,
        "%d photographs in %.0f s, %s%n",
        count,
        seconds,
        said.err().strip().replaceAll("(?s).*(peak)", "$1"));
    assertThat(said.out()).hasSize(count);
    assertThat(said.out()).filteredOn(line -> line.contains("no tag: left")).isEmpty();
    assertThat(said.out())
        .filteredOn(line -> line.contains("\tthe whole engine"))
        .hasSize(count - tagged);
    assertThat(said.err()).doesNotContain("OutOfMemory");
    assertThat(said.whole()).isLessThan(MOST);
    assertThat(said.status()).isZero();
    try (Stream<Path> kept = Files.list(Path.of(job).resolve("photos"))) {
      assertThat(kept).hasSize(count);
    }
    assertThat(shop.right("photo", "--job", job).lines()).hasSize(count);
  }

  /** Half of them show a part's tag; each is a file of its own. */
  private void photographs(int count) throws IOException {
    List<byte[]> drawn = new ArrayList<>();
    for (int width : WIDTHS) {
      drawn.add(PhotographFiles.jpeg(width, Optional.of(tag(drawn.size())), width));
      drawn.add(PhotographFiles.jpeg(width, Optional.empty(), width + 1));
    }
    for (int at = 0; at < count; at++) {
      tagged += at % 2 == 0 ? 1 : 0;
      byte[] bytes = PhotographFiles.numbered(drawn.get(at % drawn.size()), at);
      Files.write(camera.resolve(String.format(Locale.ROOT, "photo-%03d.jpg", at)), bytes);
    }
  }

  private TagCode tag(int at) {
    String digits = shop.right("places", "--job", job).rows().get(at)[1];
    return TagCode.find(digits.replaceAll("\\D", "")).orElseThrow();
  }

  private record Said(int status, List<String> out, String err) {
    /** What the whole process took at most, in bytes; 0 where the system does not say. */
    long whole() {
      return Long.parseLong(err.strip().replaceAll("(?s).*whole (\\d+)$", "$1"));
    }
  }

  private Said read() throws IOException, InterruptedException {
    Path err = folder.resolve("said.txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                HEAP,
                "-Djava.awt.headless=true",
                "-Duser.home=" + folder,
                "-cp",
                System.getProperty("java.class.path"),
                PeakMemory.class.getName(),
                "photos",
                camera.toString(),
                "--engine",
                "--job",
                job)
            .redirectError(err.toFile())
            .start();
    try (InputStream out = process.getInputStream()) {
      List<String> lines = new String(out.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      return new Said(process.waitFor(), lines, Files.readString(err));
    }
  }
}
