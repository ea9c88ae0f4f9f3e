package wherefrom.print;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FinishedFileTest {
  @TempDir Path folder;

  @Test
  void anOlderFileStaysWhenWritingFails() throws IOException {
    Path file = Files.writeString(folder.resolve("tags.pdf"), "old");
    assertThatThrownBy(
            () ->
                FinishedFile.write(
                    file,
                    out -> {
                      out.write(new byte[9_000]);
                      throw new IOException("no space left");
                    }))
        .hasMessage("no space left");
    assertThat(file).hasContent("old");
    try (Stream<Path> left = Files.list(folder)) {
      assertThat(left).containsExactly(file);
    }
  }

  @Test
  void aNewOneReplacesItAndFoldersAreMade() throws IOException {
    Path file = folder.resolve("new").resolve("tags.pdf");
    FinishedFile.write(file, out -> out.write('a'));
    FinishedFile.write(file, out -> out.write('b'));
    assertThat(file).hasContent("b");
  }

  @Test
  void aFolderIsNotAFile() {
    assertThatThrownBy(() -> FinishedFile.write(folder, out -> out.write(1)))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("is a folder");
  }
}
