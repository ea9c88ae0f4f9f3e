package wherefrom.logbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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
    byte[] photo = isKept(jobFolder, picture, read) ? read : toKeep(picture, read);
    String name = nameOf(photo);
    Path kept = locate(jobFolder, name);
    if (!Files.exists(kept) || !isWhole(kept)) {
      try {
        files.write(kept, photo);
        Folders.force(jobFolder);
      } catch (IOException e) {
        throw new IOException(
            "The photograph could not be kept: " + DiskErrors.andRemedy(e) + ".", e);
      }
    }
    return name;
  }

  @Override
  public String name(Path picture) throws IOException {
    return nameOf(toKeep(picture, bytes(picture)));
  }

  /** A photograph as it goes into the job. */
  private static byte[] toKeep(Path picture, byte[] read) throws IOException {
    PictureType type = type(picture, read);
    return type == PictureType.JPEG ? Placeless.of(read) : PlacelessPng.of(read);
  }

  private static String nameOf(byte[] kept) {
    return Sums.digest(kept) + "." + PictureType.find(kept).orElseThrow().extension();
  }

  private static PictureType type(Path picture, byte[] read) throws IOException {
    return PictureType.find(read).orElseThrow(() -> new IOException(refusal(picture, read)));
  }

  /**
   * Whether the same lies in the job as earlier versions kept it, byte for byte with the place
   * where it was taken: the logbook names it so, and it is mended under that name.
   */
  private boolean isKept(Path jobFolder, Path picture, byte[] read) throws IOException {
    String name = Sums.digest(read) + "." + type(picture, read).extension();
    return Files.exists(locate(jobFolder, name));
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
