package wherefrom.files;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Optional;
import wherefrom.files.AtomicFile.Content;

/**
 * A file for other people on its way out. Where it goes and whether it may take the place of
 * another is settled when this is made, so that whoever writes it cannot overwrite anything.
 */
public interface Outgoing {

  /**
   * Writes the whole of it.
   *
   * @throws IOException with a plain sentence; nothing that was there is changed
   */
  void write(Content content) throws IOException;

  /** A new file: one that is there already is left as it is, and writing fails. */
  static Outgoing to(Path file) {
    return new OutgoingFile(file, false);
  }

  /** The same, where the person has agreed that an older file goes. */
  static Outgoing replacing(Path file) {
    return new OutgoingFile(file, true);
  }

  /** A stream, such as standard output, that stays open. */
  static Outgoing into(OutputStream stream) {
    return content -> {
      content.writeTo(new Unclosed(stream));
      stream.flush();
    };
  }

  /** The sentence that a file is in the way; empty where the name is free, or names a device. */
  static Optional<String> findTaken(Path file) {
    return OutgoingFile.isTaken(file) ? Optional.of(file + " is there already.") : Optional.empty();
  }
}
