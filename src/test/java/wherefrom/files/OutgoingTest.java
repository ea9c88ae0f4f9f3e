package wherefrom.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What goes out for other people overwrites nothing, and nothing of it is half there. */
class OutgoingTest {
  @TempDir Path folder;

  private static AtomicFile.Content text(String text) {
    return out -> out.write(text.getBytes(StandardCharsets.UTF_8));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> inside = Files.list(folder)) {
      return inside.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void aNewFileIsThereWhole() throws IOException {
    Path file = folder.resolve("deep/down/slip.pdf");
    Outgoing.to(file).write(text("slip"));
    assertThat(file).hasContent("slip");
  }

  @Test
  void aFileThatIsThereStaysUnlessItMayGo() throws IOException {
    Path file = Files.writeString(folder.resolve("money.csv"), "annotated");
    assertThat(Outgoing.findTaken(file)).contains(file + " is there already.");
    assertThatThrownBy(() -> Outgoing.to(file).write(text("new")))
        .isInstanceOf(IOException.class)
        .hasMessage(file + " is there already. Choose another name.");
    assertThat(file).hasContent("annotated");
    Outgoing.replacing(file).write(text("new"));
    assertThat(file).hasContent("new");
    assertThat(names()).containsExactly("money.csv");
  }

  @Test
  void oneThatComesWhileItIsWrittenStaysToo() throws IOException {
    Path file = folder.resolve("money.csv");
    assertThatThrownBy(
            () -> Outgoing.to(file).write(out -> Files.writeString(file, "someone else's")))
        .hasMessageContaining("is there already");
    assertThat(file).hasContent("someone else's");
    assertThat(names()).containsExactly("money.csv");
  }

  @Test
  void whatBreaksOffLeavesTheOlderFileAndNothingBesideIt() throws IOException {
    Path file = Files.writeString(folder.resolve("record.pdf"), "older");
    assertThatThrownBy(
            () ->
                Outgoing.replacing(file)
                    .write(
                        out -> {
                          out.write(new byte[70_000]);
                          throw new IOException("the disk is full");
                        }))
        .hasMessage("the disk is full");
    assertThat(file).hasContent("older");
    assertThat(names()).containsExactly("record.pdf");
  }

  @Test
  void rightsAreThoseThatTheUmaskGives() throws IOException {
    Path file = folder.resolve("in/tags.pdf");
    Outgoing.to(file).write(text("tags"));
    Path likeAny = Files.createFile(folder.resolve("like any"));
    Path folderLikeAny = Files.createDirectory(folder.resolve("folder like any"));
    assertThat(rights(file)).isEqualTo(rights(likeAny));
    assertThat(rights(folder.resolve("in"))).isEqualTo(rights(folderLikeAny));
    Path atomic = folder.resolve("atomic");
    new AtomicFile().write(atomic, new byte[1]);
    assertThat(rights(atomic)).isEqualTo(rights(likeAny));
    assertThat(rights(DraftFiles.folder(folder, ".demo-"))).isEqualTo(rights(folderLikeAny));
  }

  private static String rights(Path path) throws IOException {
    return PosixFilePermissions.toString(Files.getPosixFilePermissions(path));
  }

  @Test
  void whoCouldReadTheOlderFileCanReadTheNewOne() throws IOException {
    Path file = Files.writeString(folder.resolve("shared.csv"), "older");
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-rw-rw-"));
    Outgoing.replacing(file).write(text("new"));
    assertThat(rights(file)).isEqualTo("rw-rw-rw-");
  }

  @Test
  void aLinkIsFollowed() throws IOException {
    Path real = Files.createDirectory(folder.resolve("other disk")).resolve("money.csv");
    Path link =
        Files.createSymbolicLink(folder.resolve("money.csv"), Path.of("other disk/money.csv"));
    Outgoing.to(link).write(text("first"));
    assertThat(real).hasContent("first");
    assertThatThrownBy(() -> Outgoing.to(link).write(text("second")))
        .hasMessageContaining("is there already");
    Outgoing.replacing(link).write(text("second"));
    assertThat(real).hasContent("second");
    assertThat(Files.isSymbolicLink(link)).isTrue();
  }

  @Test
  void aLinkThatLeadsToItselfIsRefused() throws IOException {
    Path link = folder.resolve("round");
    Files.createSymbolicLink(link, Path.of("round"));
    assertThatThrownBy(() -> Outgoing.to(link).write(text("x")))
        .hasMessage(link + " is a link that leads to itself. Give another name.");
  }

  @Test
  void aDeviceIsWrittenToAndStaysADevice() throws IOException {
    Path device = Path.of("/dev/null");
    assumeTrue(Files.exists(device), "a device");
    Outgoing.to(device).write(text("gone"));
    Outgoing.replacing(device).write(text("gone"));
    assertThat(Files.readAttributes(device, "*").get("isOther")).isEqualTo(true);
    Path link = Files.createSymbolicLink(folder.resolve("nowhere"), device);
    Outgoing.replacing(link).write(text("gone"));
    assertThat(Files.readAttributes(device, "*").get("isOther")).isEqualTo(true);
    assertThat(names()).containsExactly("nowhere");
  }

  @Test
  void aFileOnTheDiskInMemoryIsAFile() throws IOException {
    Path memory = Path.of("/dev/shm");
    assumeTrue(Files.isWritable(memory), "a disk in memory among the devices");
    Path own = Files.createTempDirectory(memory, "wherefrom-test-");
    Path file = own.resolve("tags.pdf");
    try {
      Outgoing.to(file).write(text("tags"));
      assertThat(file).hasContent("tags");
      assertThatThrownBy(() -> Outgoing.to(file).write(text("other")))
          .hasMessage(file + " is there already. Choose another name.");
    } finally {
      Files.deleteIfExists(file);
      Files.delete(own);
    }
  }

  @Test
  void aPipeIsWrittenToAndStaysAPipe() throws Exception {
    assumeTrue(Files.isExecutable(Path.of("/usr/bin/mkfifo")), "pipes with names");
    Path pipe = folder.resolve("pipe");
    assertThat(new ProcessBuilder("/usr/bin/mkfifo", pipe.toString()).start().waitFor()).isZero();
    CompletableFuture<byte[]> read = CompletableFuture.supplyAsync(() -> all(pipe));
    Outgoing.to(pipe).write(text("through"));
    assertThat(read.get(10, TimeUnit.SECONDS)).isEqualTo("through".getBytes());
    assertThat(Files.readAttributes(pipe, "*").get("isOther")).isEqualTo(true);
  }

  private static byte[] all(Path pipe) {
    try (InputStream in = Files.newInputStream(pipe)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void aFolderIsRefused() {
    assertThatThrownBy(() -> Outgoing.replacing(folder).write(text("x")))
        .hasMessage(folder + " is a folder. Give the name of a file.");
  }

  @Test
  void aStreamStaysOpen() throws IOException {
    boolean[] closed = {false};
    ByteArrayOutputStream stream =
        new ByteArrayOutputStream() {
          @Override
          public void close() {
            closed[0] = true;
          }
        };
    Outgoing.into(stream)
        .write(
            out -> {
              out.write("table".getBytes(StandardCharsets.UTF_8));
              out.close();
            });
    assertThat(stream).hasToString("table");
    assertThat(closed[0]).isFalse();
  }
}
