package wherefrom.ui.files;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Desk;
import wherefrom.ui.app.Screen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.Tiles;
import wherefrom.ui.controls.TouchKey;

/** Asks for a folder or a file, by touch. */
public final class FilesScreen implements Screen {
  private final Desk desk;
  private final String title;
  private final FilesModel model;
  private final Consumer<Path> done;
  private final Pager<FilesModel.Line> list;
  private final FitText here;
  private final VBox view;

  private FilesScreen(
      Desk desk, String title, FilesModel model, boolean folderWanted, Consumer<Path> done) {
    this.desk = desk;
    this.title = title;
    this.model = model;
    this.done = done;
    here = desk.touch().small("");
    list = Pager.list(desk.touch(), this::row);
    List<TouchKey> keys = new ArrayList<>();
    keys.add(desk.touch().key("Up", this::up));
    keys.add(desk.touch().key("Other drive", this::drives));
    if (folderWanted) {
      keys.add(desk.touch().primary("Choose this folder", () -> choose(model.folder())));
    }
    Tiles row = Tiles.row(desk.scale(), keys.toArray(TouchKey[]::new));
    view = Panes.column(desk.scale(), here, list, row);
    refresh();
  }

  /** Asks for a folder, beginning at one that has to do with it. */
  public static FilesScreen folder(Desk desk, String title, Path start, Consumer<Path> done) {
    return new FilesScreen(desk, title, new FilesModel(start, List.of()), true, done);
  }

  /** Asks for a folder to save in, beginning where the last file was saved or chosen. */
  public static FilesScreen folder(Desk desk, String title, Consumer<Path> done) {
    return folder(
        desk,
        title,
        LastPlace.of(desk),
        folder -> {
          LastPlace.keep(desk, folder);
          done.accept(folder);
        });
  }

  /**
   * Asks for a file, beginning where the last one was saved or chosen.
   *
   * @param endings of the files that can be chosen, in small letters, such as {@code .png}
   */
  public static FilesScreen file(
      Desk desk, String title, List<String> endings, Consumer<Path> done) {
    FilesModel model = new FilesModel(LastPlace.of(desk), endings);
    return new FilesScreen(
        desk,
        title,
        model,
        false,
        file -> {
          LastPlace.keep(desk, model.folder());
          done.accept(file);
        });
  }

  private Region row(FilesModel.Line line) {
    String words = line.folder() ? line.words() + " (folder)" : line.words();
    return desk.touch().key(words, () -> press(line)).left();
  }

  private void press(FilesModel.Line line) {
    if (line.folder()) {
      model.go(line.path());
      refresh();
    } else {
      choose(line.path());
    }
  }

  private void choose(Path path) {
    desk.navigator().back();
    done.accept(path);
  }

  private void up() {
    model.findAbove().ifPresent(model::go);
    refresh();
  }

  private void drives() {
    List<Choice<Path>> roots = new ArrayList<>();
    FileSystems.getDefault()
        .getRootDirectories()
        .forEach(root -> roots.add(new Choice<>(root, root.toString(), "")));
    for (String mounts : List.of("/media", "/run/media", "/Volumes", "/mnt")) {
      Path folder = Path.of(mounts);
      if (Files.isDirectory(folder)) {
        roots.add(new Choice<>(folder, mounts, "USB drives and other disks"));
      }
    }
    desk.navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    desk,
                    "Other drive",
                    roots,
                    root -> {
                      model.go(root);
                      refresh();
                    }));
  }

  private void refresh() {
    here.setWords(model.folder().toString());
    try {
      list.setItems(model.list());
    } catch (IOException | SecurityException e) {
      list.setItems(List.of());
      desk.say("This folder cannot be read: " + model.folder() + ".");
    }
  }

  @Override
  public String title() {
    return title;
  }

  @Override
  public Region view() {
    return view;
  }

  @Override
  public boolean onJob() {
    return false;
  }
}
