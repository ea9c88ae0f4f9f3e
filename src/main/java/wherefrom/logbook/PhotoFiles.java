package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Pattern;
import wherefrom.files.AtomicFile;
import wherefrom.files.Folders;
import wherefrom.files.Heic;
import wherefrom.files.Incoming;
import wherefrom.job.photos.Photos;

/** Photographs in a job's folder, each named by the SHA-256 of its bytes. */
public final class PhotoFiles implements Photos {
  static final String FOLDER = "photos";
  private static final Pattern NAME = Pattern.compile("([0-9a-f]{64})\\.(png|jpg)");
  static final int MOST_BYTES = 200_000_000;

  private final AtomicFile files;

  public PhotoFiles() {
    this(new AtomicFile());
  }

  /**
   * @param files writes the photographs
   */
  public PhotoFiles(AtomicFile files) {
    this.files = files;
  }

  @Override
  public String add(Path jobFolder, Path picture) throws IOException {
    if (isLogbook(jobFolder, picture)) {
      throw new IOException(
          picture.getFileName() + " is of the job's own logbook. Use a PNG or JPEG file.");
    }
    byte[] read = bytes(picture);
    Optional<ToKeep> before = keptBefore(jobFolder, read, type(picture, read));
    ToKeep photo = before.isPresent() ? before.get() : toKeep(picture, read);
    Path kept = locate(jobFolder, photo.name());
    if (!Files.exists(kept) || !isWhole(kept)) {
      try {
        files.write(kept, photo.bytes());
        Folders.force(jobFolder);
      } catch (IOException e) {
        throw new IOException(
            "The photograph could not be kept: " + DiskErrors.andRemedy(e) + ".", e);
      }
    }
    return photo.name();
  }

  @Override
  public String name(Path picture) throws IOException {
    return toKeep(picture).name();
  }

  /** A photograph as it goes into the job. */
  private record ToKeep(String name, byte[] bytes) {}

  private static ToKeep toKeep(Path picture) throws IOException {
    return toKeep(picture, bytes(picture));
  }

  private static ToKeep toKeep(Path picture, byte[] read) throws IOException {
    PictureType type = type(picture, read);
    return toKeep(type == PictureType.JPEG ? Placeless.of(read) : PlacelessPng.of(read), type);
  }

  private static ToKeep toKeep(byte[] bytes, PictureType type) {
    return new ToKeep(Sums.digest(bytes) + "." + type.extension(), bytes);
  }

  private static PictureType type(Path picture, byte[] read) throws IOException {
    return PictureType.find(read).orElseThrow(() -> new IOException(refusal(picture, read)));
  }

  /**
   * The same as earlier versions kept it, byte for byte with the place where it was taken, where it
   * lies in the job: the logbook names it so, and it is mended under that name.
   */
  private Optional<ToKeep> keptBefore(Path jobFolder, byte[] read, PictureType type) {
    ToKeep whole = toKeep(read, type);
    return Files.exists(locate(jobFolder, whole.name())) ? Optional.of(whole) : Optional.empty();
  }

  private static String refusal(Path picture, byte[] bytes) {
    String kept = " is not a picture that can be kept. Use a PNG or JPEG file.";
    return picture.getFileName() + (Heic.is(bytes) ? Heic.REMEDY : kept);
  }

  /** Where locks belong to the process, closing a file frees the lock that the job has on it. */
  private static boolean isLogbook(Path jobFolder, Path picture) throws IOException {
    if (!Files.exists(picture)) {
      return false;
    }
    Path real = picture.toRealPath();
    return real.getFileName().toString().startsWith("logbook")
        && Files.isSameFile(real.getParent(), jobFolder);
  }

  private static byte[] bytes(Path picture) throws IOException {
    try {
      return Incoming.read(picture, MOST_BYTES);
    } catch (java.nio.file.FileSystemException e) {
      throw new IOException("The picture cannot be read: " + DiskErrors.of(e) + ".", e);
    }
  }

  @Override
  public Path locate(Path jobFolder, String name) {
    if (!isName(name)) {
      throw new IllegalArgumentException("not the name of a photograph: " + name);
    }
    return jobFolder.resolve(FOLDER).resolve(name);
  }

  static boolean isName(String name) {
    return NAME.matcher(name).matches();
  }

  /** Whether a file is what its name says. */
  static boolean isWhole(Path file) throws IOException {
    return isWhole(file, Files.readAllBytes(file));
  }

  /** Whether these bytes are what the file's name says. */
  static boolean isWhole(Path file, byte[] bytes) {
    return String.valueOf(file.getFileName()).startsWith(Sums.digest(bytes) + ".");
  }
}
