package wherefrom.ui.files;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.layout.Region;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.Foot;
import wherefrom.ui.app.KeyRow;
import wherefrom.ui.app.Page;
import wherefrom.ui.app.ScreenContext;
import wherefrom.ui.app.TextEntryScreen;
import wherefrom.ui.controls.FitText;
import wherefrom.ui.controls.Pager;
import wherefrom.ui.controls.Panes;
import wherefrom.ui.controls.TagKey;

/** Asks for a folder or a file, by touch. */
public final class FilesScreen extends Page {
  private final FilesModel model;
  private final Consumer<Path> done;
  private final Pager<FilesModel.Line> list;
  private final FitText here;

  private FilesScreen(
      ScreenContext context,
      String title,
      FilesModel model,
      boolean folderWanted,
      Consumer<Path> done) {
    super(context, title, false);
    this.model = model;
    this.done = done;
    here = context.touch().small("");
    list = Pager.list(context.touch(), this::row);
    lay(Panes.column(context.scale(), here, list, foot(folderWanted)));
  }

  private Region foot(boolean folderWanted) {
    List<KeyRow.Act> acts =
        new ArrayList<>(
            List.of(
                act("Folder above", this::up),
                act("Other drive", this::drives),
                act("Type a path", this::typePath)));
    if (!folderWanted) {
      return KeyRow.of(context, 1, acts);
    }
    acts.add(act("New folder", this::newFolder));
    TagKey tag =
        context
            .touch()
            .tag(
                context.touch().brief("Choose this folder", "Use this folder"),
                "",
                () -> choose(model.folder()));
    return new Foot(context, tag, KeyRow.of(context, 1, acts));
  }

  private void typePath() {
    open(
        () ->
            new TextEntryScreen(
                context,
                "Which folder?",
                model.folder().toString(),
                typed -> went(model.goTyped(typed))));
  }

  private void newFolder() {
    open(
        () ->
            new TextEntryScreen(context, "Name of the folder", "", name -> went(model.make(name))));
  }

  private void went(Optional<String> fault) {
    fault.ifPresent(context::say);
    refresh();
  }

  /** Asks for a folder, beginning at one that has to do with it. */
  public static FilesScreen folder(
      ScreenContext context, String title, Path start, Consumer<Path> done) {
    return new FilesScreen(context, title, new FilesModel(start, List.of()), true, done);
  }

  /** Asks for a folder to save in, beginning where the last file was saved or chosen. */
  public static FilesScreen folder(ScreenContext context, String title, Consumer<Path> done) {
    return folder(
        context,
        title,
        LastPlace.of(context),
        folder -> {
          LastPlace.keep(context, folder);
          done.accept(folder);
        });
  }

  /**
   * Asks for a file, beginning where the last one was saved or chosen.
   *
   * @param endings of the files that can be chosen, in small letters, such as {@code .png}
   */
  public static FilesScreen file(
      ScreenContext context, String title, List<String> endings, Consumer<Path> done) {
    FilesModel model = new FilesModel(LastPlace.of(context), endings);
    return new FilesScreen(
        context,
        title,
        model,
        false,
        file -> {
          LastPlace.keep(context, model.folder());
          done.accept(file);
        });
  }

  private Region row(FilesModel.Line line) {
    String words = line.folder() ? line.words() + " /" : line.words();
    return context.touch().key(words, () -> press(line)).left();
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
    context.navigator().back();
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
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context,
                    "Other drive",
                    roots,
                    root -> {
                      model.go(root);
                      refresh();
                    }));
  }

  @Override
  protected void refresh() {
    here.setWords(model.folder().toString());
    try {
      list.setItems(model.list());
      if (model.list().isEmpty()) {
        here.setWords(model.whenEmpty());
      }
    } catch (IOException | SecurityException e) {
      list.setItems(List.of());
      context.say("This folder cannot be read: " + model.folder() + ".");
    }
  }
}
