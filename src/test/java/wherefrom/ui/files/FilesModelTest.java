package wherefrom.ui.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Going through folders. */
class FilesModelTest {
  @TempDir Path folder;

  @Test
  void foldersComeFirstThenTheWantedFilesHiddenOnesNever() throws IOException {
    Files.createDirectory(folder.resolve("zylinder"));
    Files.createDirectory(folder.resolve(".hidden"));
    Files.createFile(folder.resolve("b.PNG"));
    Files.createFile(folder.resolve("A.png"));
    Files.createFile(folder.resolve("notes.txt"));
    assertThat(new FilesModel(folder, List.of(".png")).list())
        .extracting(FilesModel.Line::words)
        .containsExactly("zylinder", "A.png", "b.PNG");
  }

  @Test
  void aFolderThatIsGoneGivesTheNearestOneAbove() {
    FilesModel model = new FilesModel(folder.resolve("gone/too"), List.of());
    assertThat(model.folder()).isEqualTo(folder.toAbsolutePath());
  }
}
