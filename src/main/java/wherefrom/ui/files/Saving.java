package wherefrom.ui.files;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import wherefrom.files.FileNames;
import wherefrom.files.Outgoing;
import wherefrom.ui.app.Choice;
import wherefrom.ui.app.ChoiceScreen;
import wherefrom.ui.app.ScreenContext;

/**
 * Saves a file where the person says, beginning where the last one was saved. A file of that name
 * stays as it is unless the person lets it go.
 *
 * @param name of the file
 * @param work writes it, away from the window's thread
 * @param done is given the file and what came of it
 */
public record Saving<T>(
    ScreenContext context, String title, String name, Work<T> work, BiConsumer<Path, T> done) {

  /** Writes a file. */
  @FunctionalInterface
  public interface Work<T> {
    T write(Outgoing out) throws IOException;
  }

  /** Asks for the folder. */
  public void ask() {
    context.navigator().open(() -> FilesScreen.folder(context, title, this::into));
  }

  private void into(Path folder) {
    Path file = folder.resolve(name);
    Optional<String> taken = Outgoing.findTaken(file);
    if (taken.isPresent()) {
      askOver(file);
    } else {
      write(Outgoing.to(file), file);
    }
  }

  private void askOver(Path file) {
    Path free = FileNames.beside(file);
    Runnable both = () -> write(Outgoing.to(free), free);
    Runnable replace = () -> write(Outgoing.replacing(file), file);
    List<Choice<Runnable>> ways =
        List.of(
            new Choice<>(both, "Keep both", "the new one is " + free.getFileName()),
            new Choice<>(replace, "Replace it", "the file that is there is lost"));
    context
        .navigator()
        .open(
            () ->
                new ChoiceScreen<>(
                    context, "The file " + name + " is there already", ways, Runnable::run));
  }

  private void write(Outgoing out, Path file) {
    context.longWork(
        "Writing " + file.getFileName(),
        context.writings().of(() -> work.write(out)),
        came -> done.accept(file, came));
  }
}
