package wherefrom.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import wherefrom.files.AtomicFile;
import wherefrom.files.Outgoing;

/**
 * Where a call wants a file: by its name, or {@code -} for standard output. A file that is there
 * stays as it is unless the call says that it may go.
 *
 * @param name as the answer gives it
 */
record Outlet(String name, Place place, Outgoing out) {
  /** What is there before anything is written. */
  enum Place {
    /** Nothing: it will be a file of that name. */
    FREE,
    /** A file, which the call lets go. */
    TAKEN,
    /** Something that is written into: a stream, a device, what a link points to. */
    OPEN
  }

  static final Option REPLACE = Option.flag("--replace", "a file of that name may be replaced");
  private static final String STANDARD_OUTPUT = "-";

  /** The value of an option that the usage requires. */
  static Outlet get(Call call, String option, Answer answer) throws BadInput {
    call.get(option);
    return find(call, option, answer).orElseThrow();
  }

  /** The value of an option, where it is given. */
  static Optional<Outlet> find(Call call, String option, Answer answer) throws BadInput {
    Optional<String> name = call.find(option);
    if (name.isEmpty()) {
      return Optional.empty();
    }
    if (name.get().equals(STANDARD_OUTPUT)) {
      return Optional.of(
          new Outlet("standard output", Place.OPEN, Outgoing.into(answer.giveWay())));
    }
    Path file = call.path(option);
    boolean replace = call.has(REPLACE);
    if (!replace) {
      refuseTaken(file, call);
    }
    Outgoing out = replace ? Outgoing.replacing(file) : Outgoing.to(file);
    return Optional.of(new Outlet(file.toString(), place(file), out));
  }

  private static Place place(Path file) {
    if (Outgoing.findTaken(file).isPresent()) {
      return Place.TAKEN;
    }
    return Files.exists(file, LinkOption.NOFOLLOW_LINKS) ? Place.OPEN : Place.FREE;
  }

  private static void refuseTaken(Path file, Call call) throws BadInput {
    Optional<String> taken = Outgoing.findTaken(file);
    if (taken.isPresent()) {
      throw call.wrong(taken.get() + " Give another name, or --replace to write over it.");
    }
  }

  /**
   * Refuses two outlets of one call that come to the same.
   *
   * @param outlets those that the call gives
   */
  static void refuseSame(Call call, List<Outlet> outlets) throws BadInput {
    if (outlets.stream().map(Outlet::name).distinct().count() < outlets.size()) {
      throw call.wrong("Two files are to go to one place: give each its own name.");
    }
  }

  void write(AtomicFile.Content content) throws IOException {
    out.write(content);
  }
}
